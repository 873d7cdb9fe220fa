package monochord.shell.sentence;

/** What can stand in a place of a sentence. Its name is how forms write the place. */
public enum Value {
    BOOK,
    BPM,
    CHORD,
    CHORDS,
    CODE,
    DAY("YYYY-MM-DD"),
    FILE,
    FILES("FILE …"),
    FOLDER,
    FRET,
    IDIOM,
    INSTRUMENT,
    KEY,
    KEYS,
    LEADSHEET,
    LESSON,
    LESSON_FILES("FILE …"),
    MELODY,
    METRE("3/4"),
    MINUTES,
    MODE,
    MUSIC,
    NAME,
    NOTE,
    NOTES,
    NUMBER,
    NUMERAL,
    OUT,
    PART,
    PATCH,
    PATTERN,
    PLACE,
    PROGRESSION,
    RANGE,
    SCALE,
    SEED("N"),
    SKILL,
    SUBJECT,
    TEXT,
    TIMES("N"),
    TOPIC,
    TUNE,
    VERB,
    VOICE,
    VOICES("VOICES | VOICES"),
    WEEKS("ASSIGNMENT/WEEKS"),
    WHITE_KEYS("KEYS"),
    /** Nothing: the word before it says all. */
    NONE("");

    private final String written;

    Value() {
        this.written = name();
    }

    Value(String written) {
        this.written = written;
    }

    /** As a form writes it. */
    @Override
    public String toString() {
        return written;
    }
}
