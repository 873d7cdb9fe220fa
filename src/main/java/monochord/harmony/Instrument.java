package monochord.harmony;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import monochord.theory.Interval;
import monochord.theory.Unreadable;

/**
 * A group of instruments that read at one distance from what sounds.
 *
 * <p>Source: Integrated Music Theory (open university course text), lesson 12a; the alto flute, which that lesson has a
 * fifth up, is written a fourth above what sounds.
 */
public enum Instrument {
    CONCERT(
            "instruments in concert pitch",
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
            "B♭ instruments",
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
    B_FLAT_TENOR("B♭ tenor instruments", "M9", "tenor sax", "bass clarinet"),
    E_FLAT("E♭ instruments", "M6", "eb", "e flat", "alto sax", "eb alto sax"),
    E_FLAT_BARITONE("E♭ baritone instruments", "M13", "baritone sax", "eb baritone sax"),
    E_FLAT_CLARINET("the E♭ clarinet", "-m3", "eb clarinet"),
    F("F instruments", "P5", "f", "horn", "f horn", "french horn", "english horn", "cor anglais"),
    A("the clarinet in A", "m3", "a", "a clarinet"),
    G("the alto flute", "P4", "g", "alto flute"),
    OCTAVE_UP("instruments that sound an octave higher", "-P8", "piccolo"),
    OCTAVE_DOWN("instruments that sound an octave lower", "P8", "guitar", "double bass", "bass", "contrabassoon");

    private final String title;
    private final Interval writtenAbove;
    private final List<String> names;

    Instrument(String title, String writtenAbove, String... names) {
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

    @Override
    public String toString() {
        return title;
    }
}
