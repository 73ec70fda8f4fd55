package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;

/** What has been found wrong so far while the names and values of a spec are resolved. */
final class Troubles {
    private final List<Finding> found = new ArrayList<>();

    /** Takes a finding. */
    void add(Finding finding) {
        found.add(finding);
    }

    /** Takes a finding of the code's usual severity. */
    void add(Code code, Place place, String message, String hint) {
        add(Finding.of(code, place, message).withHint(hint));
    }

    /** Takes a finding that leaves whoever reports it without a result. */
    <T> Optional<T> refuse(Code code, Place place, String message, String hint) {
        add(code, place, message, hint);
        return Optional.empty();
    }

    /** Whether nothing has been found. */
    boolean isEmpty() {
        return found.isEmpty();
    }

    /** All of them, by line, column and code. */
    List<Finding> sorted() {
        return found.stream().distinct().sorted().toList();
    }
}
