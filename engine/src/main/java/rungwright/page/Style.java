package rungwright.page;

/**
 * The style of a page, and a policy that lets a browser apply it and nothing else: no script, no picture, no
 * font, no frame, no form, nothing fetched.
 */
record Style(Resource sheet) {
    /** The style of that name. */
    static Style read(String name) {
        return new Style(Resource.read(name));
    }

    /** Its rules. */
    String css() {
        return sheet.text();
    }

    /** The content security policy of a page with this style alone, which it knows by its digest. */
    String policy() {
        return "default-src 'none'; style-src " + sheet.source() + "; base-uri 'none'; form-action 'none'";
    }
}
