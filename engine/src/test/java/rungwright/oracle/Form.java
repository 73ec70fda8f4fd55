package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A formula of a worked-out measure, worked out in seconds, kilograms and metres. */
interface Form {
    /** What a name stands for, in base units, or nothing. */
    interface Look {
        Optional<Frac> name(String name);

        Optional<Frac> previous(String name);
    }

    Optional<Frac> value(Look look);

    /** How it is written in a spec. */
    String text();

    /** Names that it reads now. */
    default List<String> names() {
        return List.of();
    }

    /** Names whose earlier reading it takes. */
    default List<String> previous() {
        return List.of();
    }

    /** A number with a unit. */
    record Num(Frac number, String unit) implements Form {
        @Override
        public Optional<Frac> value(Look look) {
            return Optional.of(Units.toBase(number, unit));
        }

        @Override
        public String text() {
            return (number.text() + " " + unit).strip();
        }
    }

    /** A measure or a fact. */
    record Name(String name) implements Form {
        @Override
        public Optional<Frac> value(Look look) {
            return look.name(name);
        }

        @Override
        public String text() {
            return name;
        }

        @Override
        public List<String> names() {
            return List.of(name);
        }
    }

    /** The latest earlier reading of a measure. */
    record Prev(String name) implements Form {
        @Override
        public Optional<Frac> value(Look look) {
            return look.previous(name);
        }

        @Override
        public String text() {
            return "previous " + name;
        }

        @Override
        public List<String> previous() {
            return List.of(name);
        }
    }

    /** Two formulas and what to do with them: one of + - * and /. */
    record Both(char sign, Form left, Form right) implements Form {
        @Override
        public Optional<Frac> value(Look look) {
            Optional<Frac> a = left.value(look);
            Optional<Frac> b = right.value(look);
            return a.isEmpty() || b.isEmpty() ? Optional.empty() : Optional.of(result(a.get(), b.get()));
        }

        private Frac result(Frac a, Frac b) {
            switch (sign) {
                case '+':
                    return a.plus(b);
                case '-':
                    return a.minus(b);
                case '*':
                    return a.times(b);
                default:
                    return a.over(b);
            }
        }

        @Override
        public String text() {
            return left.bracketed() + " " + sign + " " + right.bracketed();
        }

        @Override
        public String bracketed() {
            return "(" + text() + ")";
        }

        @Override
        public List<String> names() {
            return joined(left.names(), right.names());
        }

        @Override
        public List<String> previous() {
            return joined(left.previous(), right.previous());
        }

        private static List<String> joined(List<String> a, List<String> b) {
            List<String> all = new ArrayList<>(a);
            all.addAll(b);
            return all;
        }
    }

    /** The text as a part of a larger formula. */
    default String bracketed() {
        return text();
    }
}
