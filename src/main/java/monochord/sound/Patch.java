package monochord.sound;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.note.Unreadable;

/**
 * A sound of the synthesizer: one of the 128 of General MIDI Level 1.
 *
 * <p>Text form: the name, such as {@code Electric Piano 1}. {@link #parse} reads all that {@link #toString} writes, a
 * number from 1 to 128, and names begun or written freely: {@code church org}, {@code honky tonk}.
 *
 * <p>Source: General MIDI Level 1 Sound Set, MIDI Manufacturers Association, 1991; 1 to 30 seen in a copy, the rest
 * from memory and compared with the names in the JDK's own sound bank.
 *
 * @param number from 1 to 128; the program number that is sent is one less
 */
public record Patch(int number) {
    private static final List<String> NAMES =
            """
            Acoustic Grand Piano,Bright Acoustic Piano,Electric Grand Piano,Honky-tonk Piano
            Electric Piano 1,Electric Piano 2,Harpsichord,Clavi
            Celesta,Glockenspiel,Music Box,Vibraphone,Marimba,Xylophone,Tubular Bells,Dulcimer
            Drawbar Organ,Percussive Organ,Rock Organ,Church Organ,Reed Organ,Accordion,Harmonica,Tango Accordion
            Acoustic Guitar (nylon),Acoustic Guitar (steel),Electric Guitar (jazz),Electric Guitar (clean)
            Electric Guitar (muted),Overdriven Guitar,Distortion Guitar,Guitar Harmonics
            Acoustic Bass,Electric Bass (finger),Electric Bass (pick),Fretless Bass
            Slap Bass 1,Slap Bass 2,Synth Bass 1,Synth Bass 2
            Violin,Viola,Cello,Contrabass,Tremolo Strings,Pizzicato Strings,Orchestral Harp,Timpani
            String Ensemble 1,String Ensemble 2,Synth Strings 1,Synth Strings 2
            Choir Aahs,Voice Oohs,Synth Voice,Orchestra Hit
            Trumpet,Trombone,Tuba,Muted Trumpet,French Horn,Brass Section,Synth Brass 1,Synth Brass 2
            Soprano Sax,Alto Sax,Tenor Sax,Baritone Sax,Oboe,English Horn,Bassoon,Clarinet
            Piccolo,Flute,Recorder,Pan Flute,Blown Bottle,Shakuhachi,Whistle,Ocarina
            Lead 1 (square),Lead 2 (sawtooth),Lead 3 (calliope),Lead 4 (chiff)
            Lead 5 (charang),Lead 6 (voice),Lead 7 (fifths),Lead 8 (bass + lead)
            Pad 1 (new age),Pad 2 (warm),Pad 3 (polysynth),Pad 4 (choir)
            Pad 5 (bowed),Pad 6 (metallic),Pad 7 (halo),Pad 8 (sweep)
            FX 1 (rain),FX 2 (soundtrack),FX 3 (crystal),FX 4 (atmosphere)
            FX 5 (brightness),FX 6 (goblins),FX 7 (echoes),FX 8 (sci-fi)
            Sitar,Banjo,Shamisen,Koto,Kalimba,Bag Pipe,Fiddle,Shanai
            Tinkle Bell,Agogo,Steel Drums,Woodblock,Taiko Drum,Melodic Tom,Synth Drum,Reverse Cymbal
            Guitar Fret Noise,Breath Noise,Seashore,Bird Tweet,Telephone Ring,Helicopter,Applause,Gunshot
            """.lines().flatMap(line -> Stream.of(line.split(","))).toList();

    /** What players call a sound whose name begins otherwise. Common practice, no source. */
    private static final Map<String, Integer> CALLED =
            Map.of("grand", 1, "e piano", 5, "vibes", 12, "organ", 17, "strings", 49, "sax", 66, "bagpipe", 110);

    public static final Patch PIANO = new Patch(1);

    /** @throws IllegalArgumentException if the number is not from 1 to 128 */
    public Patch {
        if (number < 1 || number > 128) {
            throw new IllegalArgumentException("a patch has a number from 1 to 128, not " + number);
        }
    }

    /** All 128, by number. */
    public static List<Patch> all() {
        return IntStream.rangeClosed(1, 128).mapToObj(Patch::new).toList();
    }

    /**
     * The patch of that number or name; else the first whose name begins with the text; else the first whose name has,
     * for each word of the text, a word that begins with it.
     *
     * @throws Unreadable if there is none
     */
    public static Patch parse(String text) {
        String wanted = fold(text);
        return Stream.<Stream<Patch>>of(numbered(wanted), called(wanted), begun(wanted))
                .flatMap(found -> found)
                .findFirst()
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a patch",
                        "expected a General MIDI name or a number from 1 to 128",
                        "electric piano 1"));
    }

    private static Stream<Patch> numbered(String wanted) {
        return wanted.matches("0*\\d{1,3}")
                ? all().stream().filter(patch -> patch.number == Integer.parseInt(wanted))
                : Stream.empty();
    }

    private static Stream<Patch> called(String wanted) {
        Stream<Patch> whole =
                all().stream().filter(patch -> run(fold(patch.name())).equals(run(wanted)));
        return Stream.concat(whole, Stream.ofNullable(CALLED.get(wanted)).map(Patch::new));
    }

    private static Stream<Patch> begun(String wanted) {
        if (wanted.isEmpty()) {
            return Stream.empty();
        }
        Stream<Patch> start = all().stream().filter(patch -> fold(patch.name()).startsWith(wanted));
        return Stream.concat(start, all().stream().filter(patch -> patch.answersTo(wanted)));
    }

    private boolean answersTo(String wanted) {
        List<String> words = List.of(fold(name()).split(" "));
        return Arrays.stream(wanted.split(" "))
                .allMatch(begun -> words.stream().anyMatch(word -> word.startsWith(begun)));
    }

    /** Small letters and digits, with one space wherever anything else stood. */
    private static String fold(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").strip();
    }

    private static String run(String folded) {
        return folded.replace(" ", "");
    }

    public String name() {
        return NAMES.get(number - 1);
    }

    @Override
    public String toString() {
        return name();
    }
}
