/** A spec for strength and skill progressions in, a proven program out, and histories replayed against it. */
module rungwright {
    requires com.fasterxml.jackson.core;
    requires de.siegmar.fastcsv;
    requires static info.picocli;
    requires org.yaml.snakeyaml;

    exports rungwright.compare;
    exports rungwright.criteria;
    exports rungwright.finding;
    exports rungwright.journal;
    exports rungwright.json;
    exports rungwright.measure;
    exports rungwright.page;
    exports rungwright.program;
    exports rungwright.region;
    exports rungwright.spec;
    exports rungwright.replay;
    exports rungwright.step;
    exports rungwright.text;
    exports rungwright.trial;
    exports rungwright.verify;
    exports rungwright.yaml;

    opens rungwright.cli to info.picocli;
}
