package monochord.lesson;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.BandNumber;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** The words that may stand between <code>${</code> and <code>}</code>: everything a lesson may know of the key. */
enum Fill {
    KEY("", (key, none) -> said(key)),
    TONIC("", (key, none) -> said(key.tonic())),
    DEGREE("b6", (key, degree) -> said(key.note(Degree.parse(degree)))),
    SCALE("harmonic minor", (key, kind) -> Phrase.row(scale(key, kind).tones())),
    CHORD("bVI", (key, numeral) -> said(Numeral.parse(numeral).in(key))),
    NOTES("bVI", (key, numeral) -> Phrase.row(Numeral.parse(numeral).in(key).tones())),
    NUMBER(
            "bVI",
            (key, numeral) ->
                    Phrase.typed(BandNumber.write(Numeral.parse(numeral).in(key), key, Signs.MUSIC))),
    SIGNATURE("", (key, none) -> signature(key)),
    RELATIVE("", (key, none) -> said(key.relative())),
    PARALLEL("", (key, none) -> said(key.parallel())),
    /** Letters that look like the name of a note and are none. */
    TEXT("A", (key, letters) -> Phrase.typed(letters));

    private final String argument;
    private final Rule rule;

    /** What a word and its argument read as in a key. */
    private interface Rule {
        Phrase apply(Key key, String argument);
    }

    Fill(String argument, Rule rule) {
        this.argument = argument;
        this.rule = rule;
    }

    static Optional<Fill> named(String word) {
        return Stream.of(values()).filter(fill -> fill.word().equals(word)).findFirst();
    }

    static List<String> words() {
        return Stream.of(values()).map(Fill::word).toList();
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The word with an argument that can be read, as it is written in a lesson. */
    String example() {
        return "${" + (word() + " " + argument).strip() + "}";
    }

    boolean takes(String given) {
        return given.isEmpty() ? argument.isEmpty() || this == SCALE : !argument.isEmpty();
    }

    /** @throws Unreadable if the argument cannot be read */
    Phrase in(Key key, String given) {
        return rule.apply(key, given);
    }

    private static Scale scale(Key key, String kind) {
        return kind.isEmpty() ? key.scale() : new Scale(key.tonic(), ScaleKind.parse(kind));
    }

    private static Phrase said(Object music) {
        return Phrase.of("{0}", music);
    }

    private static Phrase signature(Key key) {
        int count = Math.abs(key.signature());
        return count == 0
                ? Phrase.of("no sharps or flats")
                : Phrase.of("{0}, {1}", signs(key, count), Phrase.list(key.signatureNotes()));
    }

    private static Phrase signs(Key key, int count) {
        return key.signature() > 0
                ? Phrase.counted(count, "{0} sharp", "{0} sharps", Phrase.number(count))
                : Phrase.counted(count, "{0} flat", "{0} flats", Phrase.number(count));
    }
}
