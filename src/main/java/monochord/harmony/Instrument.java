package monochord.harmony;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * A group of instruments that read at one distance from what sounds.
 *
 * <p>Source: Integrated Music Theory (open university course text), lesson 12a; the alto flute, which that lesson has a
 * fifth up, is written a fourth above what sounds.
 */
public enum Instrument {
    CONCERT(
            Phrase.of("instruments in concert pitch"),
            "P1",
            "concert",
            "c",
            "flute",
            "oboe",
            "violin",
            "trombone",
            "piano",
            "voice",
            "bassoon",
            "strings",
            "tuba",
            "accordion"),
    B_FLAT(
            Phrase.of("{0} instruments", NoteName.parse("Bb")),
            "M2",
            "bb",
            "b flat",
            "clarinet",
            "bb clarinet",
            "bb trumpet",
            "trumpet",
            "soprano sax",
            "cornet",
            "flugelhorn"),
    B_FLAT_TENOR(Phrase.of("{0} tenor instruments", NoteName.parse("Bb")), "M9", "tenor sax", "bass clarinet"),
    E_FLAT(Phrase.of("{0} instruments", NoteName.parse("Eb")), "M6", "eb", "e flat", "alto sax", "eb alto sax"),
    E_FLAT_BARITONE(
            Phrase.of("{0} baritone instruments", NoteName.parse("Eb")), "M13", "baritone sax", "eb baritone sax"),
    E_FLAT_CLARINET(Phrase.of("the {0} clarinet", NoteName.parse("Eb")), "-m3", "eb clarinet"),
    F(
            Phrase.of("{0} instruments", NoteName.parse("F")),
            "P5",
            "f",
            "horn",
            "f horn",
            "french horn",
            "english horn",
            "cor anglais"),
    A(Phrase.of("the clarinet in {0}", NoteName.parse("A")), "m3", "a", "a clarinet"),
    G(Phrase.of("the alto flute"), "P4", "g", "alto flute"),
    OCTAVE_UP(Phrase.of("instruments that sound an octave higher"), "-P8", "piccolo"),
    OCTAVE_DOWN(
            Phrase.of("instruments that sound an octave lower"),
            "P8",
            "guitar",
            "double bass",
            "bass",
            "contrabassoon");

    private final Phrase title;
    private final Interval writtenAbove;
    private final List<String> names;

    Instrument(Phrase title, String writtenAbove, String... names) {
        this.title = title;
        this.writtenAbove = Interval.parse(writtenAbove);
        this.names = List.of(names);
    }

    /** @throws Unreadable if no instrument of ours has this name */
    public static Instrument parse(String text) {
        String name = text.strip().toLowerCase(Locale.ROOT).replace('♭', 'b').replaceAll("[ -]+", " ");
        String bare = name.replaceAll(" (instruments?|part)$", "");
        return Arrays.stream(values())
                .filter(instrument -> instrument.names.contains(bare) || instrument.names.contains(bare + " sax"))
                .findFirst()
                .orElseThrow(
                        () -> Unreadable.because(text, 0, "an instrument", "this name is not known here", "alto sax"));
    }

    /** The first of its names, which {@link #parse} reads. */
    public String text() {
        return names.get(0);
    }

    /** Every name that is read. */
    public static List<String> allNames() {
        return Arrays.stream(values()).flatMap(i -> i.names.stream()).toList();
    }

    /** How far above the sounding note the written one stands; it points down for instruments that sound higher. */
    public Interval writtenAbove() {
        return writtenAbove;
    }

    public Stream<String> names() {
        return names.stream();
    }

    /** {@code B♭ instruments}. */
    public Phrase title() {
        return title;
    }
}
