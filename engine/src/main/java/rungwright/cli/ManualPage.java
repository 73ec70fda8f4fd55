package rungwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of a command, in the language of {@code man}. */
record ManualPage(String name, CommandSpec command, String version) {
    /** The page. */
    String text() {
        List<String> lines = new ArrayList<>();
        lines.add(".TH \"" + name.toUpperCase(java.util.Locale.ROOT) + "\" 1 \"\" \"rungwright " + version
                + "\"");
        lines.add(".SH NAME");
        lines.add(plain(name + " - " + String.join(" ", command.usageMessage().header())));
        lines.add(".SH SYNOPSIS");
        lines.add(plain(synopsis()));
        section(lines, "DESCRIPTION", command.usageMessage().description());
        arguments(lines);
        subcommands(lines);
        section(lines, "NOTES", command.usageMessage().footer());
        return String.join("\n", lines) + "\n";
    }

    private String synopsis() {
        Help help = command.commandLine().getHelp();
        return help.synopsis(0).strip().replaceAll("\\s+", " ");
    }

    /** Text with its own line breaks. */
    private static void section(List<String> lines, String heading, String[] text) {
        String joined = String.join("\n", text).strip();
        if (!joined.isEmpty()) {
            lines.add(".SH " + heading);
            lines.add(".nf");
            Arrays.stream(joined.split("\n")).map(ManualPage::plain).forEach(lines::add);
            lines.add(".fi");
        }
    }

    private void arguments(List<String> lines) {
        lines.add(".SH OPTIONS");
        for (PositionalParamSpec parameter : command.positionalParameters()) {
            item(lines, parameter.paramLabel(), parameter.description());
        }
        for (OptionSpec option : command.options()) {
            if (!option.hidden()) {
                String value = option.arity().max() == 0 ? "" : " " + option.paramLabel();
                item(lines, String.join(", ", option.names()) + value, option.description());
            }
        }
    }

    private static void item(List<String> lines, String name, String[] description) {
        lines.add(".TP");
        lines.add("\\fB" + plain(name) + "\\fR");
        lines.add(plain(String.join(" ", description)));
    }

    private void subcommands(List<String> lines) {
        if (!command.subcommands().isEmpty()) {
            lines.add(".SH COMMANDS");
            command.subcommands().forEach((name, line) -> item(lines, "rungwright-" + name + "(1)",
                    line.getCommandSpec().usageMessage().header()));
        }
    }

    /** Text that {@code man} takes as it stands. */
    private static String plain(String text) {
        String escaped = text.replace("%n", " ").replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }
}
