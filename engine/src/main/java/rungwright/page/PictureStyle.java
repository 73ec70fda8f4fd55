package rungwright.page;

/** How pictures look, light and dark; lines differ by their pattern, not by colour alone. */
final class PictureStyle {
    /** The rules themselves. */
    static final String RULES = """
            .paper{fill:#fbfaf7}
            text{font:14px system-ui,-apple-system,"Segoe UI","DejaVu Sans",sans-serif;fill:#20242a}
            .head{font-size:19px;font-weight:700}.name{font-size:16px;font-weight:700}
            .small{font-size:12px}.count{font-size:11px;font-weight:700;text-anchor:middle;fill:#fbfaf7}
            .box{fill:#fff;stroke:#20242a;stroke-width:1.5}
            .goal{stroke-width:4}.everywhere{stroke-dasharray:2 3}.start{stroke-width:1.5;rx:18}
            .cell{fill:#eeece4;stroke:#6b6f76;stroke-width:1}
            .way{fill:none;stroke:#20242a;stroke-width:2;stroke-linejoin:round}
            .advance{stroke-width:3}.place{stroke-width:1.5;stroke-dasharray:10 3 2 3}
            .fall-back{stroke-dasharray:9 5}.break{stroke-dasharray:2 5;stroke-linecap:round}
            .cleared{stroke-width:1.5;stroke-dasharray:14 4}
            .tip{fill:#20242a}.trail{fill:none;stroke:#a4480c;stroke-width:4}
            .trail-tick{stroke:#a4480c;stroke-width:2}.stop{fill:#a4480c}.mark{fill:#a4480c;font-weight:600}
            @media (prefers-color-scheme:dark){
            .paper{fill:#16181c}text{fill:#e8e6df}.box{fill:#20242a;stroke:#d8d5cb}
            .cell{fill:#2e333b;stroke:#8e939b}.way{stroke:#e8e6df}.tip{fill:#e8e6df}
            .trail,.trail-tick{stroke:#f0a05a}.stop,.mark{fill:#f0a05a}.count{fill:#16181c}}
            @media print{.paper{fill:none}text{fill:#000}.box{fill:none;stroke:#000}.way{stroke:#000}
            .cell{fill:none;stroke:#000}.tip{fill:#000}}
            """;

    /** The style of a picture, as an element. */
    static final String CSS = "<style>" + RULES + "</style>\n";

    private PictureStyle() {
    }

    /** The tip of every way, under a name. */
    static String tip(String name) {
        return "<defs><marker id=\"" + name + "\" viewBox=\"0 0 10 10\" refX=\"2\" refY=\"5\""
                + " markerWidth=\"9\" markerHeight=\"9\" markerUnits=\"userSpaceOnUse\""
                + " orient=\"auto-start-reverse\"><path class=\"tip\" d=\"M0 0L10 5L0 10z\"/></marker>"
                + "</defs>\n";
    }
}
