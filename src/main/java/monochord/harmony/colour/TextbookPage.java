package monochord.harmony.colour;

import monochord.text.Phrase;

/**
 * Where an idiom is taught.
 *
 * @param page the page, chapter or lesson; empty for common practice without a source
 */
record TextbookPage(Textbook book, String page) {
    /** Openly licensed textbooks. */
    enum Textbook {
        /** Open Music Theory (Shaffer, Hughes, Moseley, 2014), CC BY-SA 4.0. */
        OPEN_MUSIC_THEORY,
        /** Open Music Theory, second edition (Gotham and others, 2021 to 2023), CC BY-SA 4.0. */
        OPEN_MUSIC_THEORY_2,
        /** Integrated Music Theory (open university course text), CC BY-NC-SA 4.0; only facts are taken. */
        INTEGRATED_MUSIC_THEORY,
        /** None: what players do. */
        COMMON_PRACTICE
    }

    static final TextbookPage COMMON_PRACTICE = new TextbookPage(Textbook.COMMON_PRACTICE, "");

    /** {@code Taught in Open Music Theory (2014), modalMixture.} */
    Phrase sentence() {
        return switch (book) {
            case OPEN_MUSIC_THEORY -> taught(Phrase.typed("Open Music Theory (2014)"));
            case OPEN_MUSIC_THEORY_2 -> taught(Phrase.typed("Open Music Theory 2 (2021)"));
            case INTEGRATED_MUSIC_THEORY -> taught(Phrase.typed("Integrated Music Theory"));
            case COMMON_PRACTICE -> Phrase.sentence("Common practice, no source.");
        };
    }

    private Phrase taught(Phrase title) {
        return Phrase.sentence("Taught in {0}, {1}.", title, Phrase.typed(page));
    }

    static TextbookPage first(String page) {
        return new TextbookPage(Textbook.OPEN_MUSIC_THEORY, page);
    }

    static TextbookPage second(String chapter) {
        return new TextbookPage(Textbook.OPEN_MUSIC_THEORY_2, chapter);
    }

    static TextbookPage lesson(String lesson) {
        return new TextbookPage(Textbook.INTEGRATED_MUSIC_THEORY, lesson);
    }
}
