package rungwright.journal;

/** Where a trainee's entries are kept, and the trainee's name. */
public record NamedStore(String name, Store store) {
}
