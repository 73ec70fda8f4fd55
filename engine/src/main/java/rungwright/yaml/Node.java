package rungwright.yaml;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.Text;

/** A part of the text as YAML sees it, with its place; aliases, tags and the like are already refused. */
sealed interface Node {
    /** Where it starts. */
    Place place();

    /** What a coach would call it: {@code a single value}, {@code a list}, {@code a map}. */
    String kind();

    /** The node as a scalar, if it is one. */
    default Optional<Scalar> scalar() {
        return Optional.empty();
    }

    /** The node as a list, if it is one. */
    default Optional<Listing> listing() {
        return Optional.empty();
    }

    /** The node as a map, if it is one. */
    default Optional<Mapping> mapping() {
        return Optional.empty();
    }

    /** Whether it could not be read and a finding says so already. */
    default boolean isLost() {
        return false;
    }

    /** How a scalar was written. */
    enum Style {
        /** Without quotes. */
        PLAIN,
        /** In single or double quotes. */
        QUOTED,
        /** On lines of its own after {@code |} or {@code >}. */
        BLOCK
    }

    /**
     * A scalar, quotes off.
     *
     * @param written of a block, how its first line begins in the source; of others, the value
     */
    record Scalar(Place place, String value, Style style, String written) implements Node {
        @Override
        public String kind() {
            return "a single value";
        }

        @Override
        public Optional<Scalar> scalar() {
            return Optional.of(this);
        }

        /** Whether there is nothing in it but spaces. */
        boolean isBlank() {
            return value.isBlank();
        }

        /** Whether nothing at all was written, not even quotes. */
        boolean isNothing() {
            return style == Style.PLAIN && value.isEmpty();
        }

        /** The text without the line end that closes a block. */
        Text text() {
            return new Text(style == Style.BLOCK ? value.stripTrailing() : value, place);
        }
    }

    /**
     * A list.
     *
     * @param cut whether items are missing from it that could not be read
     */
    record Listing(Place place, List<Node> items, boolean cut) implements Node {
        public Listing {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }

        @Override
        public Optional<Listing> listing() {
            return Optional.of(this);
        }
    }

    /**
     * A map, in the order of the text; keys may still stand in it twice.
     *
     * @param isFlow whether it stands in {@code { }}
     * @param cut whether keys are missing from it that could not be read
     */
    record Mapping(Place place, List<Pair> pairs, boolean isFlow, boolean cut) implements Node {
        public Mapping {
            pairs = List.copyOf(pairs);
        }

        @Override
        public String kind() {
            return "a map";
        }

        @Override
        public Optional<Mapping> mapping() {
            return Optional.of(this);
        }
    }

    /** A key and what stands after it. */
    record Pair(Scalar key, Node value) {
        /** The key's text. */
        String name() {
            return key.value();
        }

        /** The same under another key, which stands where this one does. */
        Pair as(String other) {
            return new Pair(new Scalar(key.place(), other, key.style(), other), value);
        }
    }

    /** Something that could not be read; a finding says so already. */
    record Lost(Place place) implements Node {
        @Override
        public String kind() {
            return "not readable";
        }

        @Override
        public boolean isLost() {
            return true;
        }
    }
}
