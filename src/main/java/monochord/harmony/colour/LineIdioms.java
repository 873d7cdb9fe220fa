package monochord.harmony.colour;

import static monochord.harmony.colour.Colour.BASS;
import static monochord.harmony.colour.Colour.CHROMATIC;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.motion.VoiceLeading;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;

/** Lines within the chords or under them, pedals, diminished chords in passing, and chords a third away. */
final class LineIdioms {
    static final String LINE_CLICHE = "line cliche";
    static final String RISING_LINE = "rising line";
    static final String COMMON_TONE_DIMINISHED = "common-tone diminished";

    private static final TextbookPage LINES = TextbookPage.COMMON_PRACTICE;
    private static final TextbookPage BASS_LINES = TextbookPage.first("popRockHarmony");
    private static final TextbookPage PEDAL = TextbookPage.lesson("9b");
    private static final TextbookPage LEADING_NOTE_SEVENTHS = TextbookPage.first("appliedChords");
    private static final TextbookPage COMMON_TONE = TextbookPage.lesson("18b");

    private LineIdioms() {}

    static List<Idiom> all() {
        return Stream.of(DIMINISHED, CLICHES, PEDALS, BASSES, MEDIANTS)
                .flatMap(List::stream)
                .toList();
    }

    private static final List<Idiom> DIMINISHED = List.of(
            Idiom.named("passing diminished", CHROMATIC, LEADING_NOTE_SEVENTHS)
                    .worth(7, 0)
                    .because(change -> Phrase.sentence(
                            "{0} fills the whole step between {1} and {2} in the bass.",
                            change.now(0), change.before(), change.after()))
                    .inMajor(
                            "I [] ii -> viio7/ii",
                            "ii [] iii -> viio7/iii",
                            "IV [] V -> viio7/V",
                            "V [] vi -> viio7/vi",
                            "iii [] ii -> biiio7")
                    .inMinor("iv [] V -> viio7/V", "VII [] i -> viio7", "VI [] VII -> viio7/VII"),
            Idiom.named(COMMON_TONE_DIMINISHED, CHROMATIC, COMMON_TONE)
                    .worth(7, 2)
                    .because(change -> leaning(change.now(0), change.after()))
                    .inMajor("I [] I -> #iio42", "V [] V -> #vio42"),
            Idiom.named(COMMON_TONE_DIMINISHED, CHROMATIC, COMMON_TONE)
                    .worth(7, 3)
                    .where(IdiomCondition.A_BAR)
                    .because(change -> leaning(change.now(1), change.old(0)))
                    .inMajor("[I] -> =,#iio42,="));

    static Phrase leaning(Chord diminished, Chord home) {
        return Phrase.sentence(
                "{0} turns about {1}: {2} stays, and {3} and {4} lean into {5} and {6}.",
                diminished,
                home,
                home.root(),
                diminished.tones().get(0),
                diminished.tones().get(1),
                home.tones().get(1),
                home.tones().get(2));
    }

    private static Phrase line(Change change, List<NoteName> notes) {
        return Phrase.sentence(
                "Over the standing {0} one voice moves by half steps: {1}.", change.old(0), Phrase.row(notes));
    }

    /** From the root of each chord down: root, major seventh, seventh, sixth. */
    static Phrase falling(Change change) {
        List<NoteName> line = new ArrayList<>(List.of(change.old(0).root()));
        for (int i = 1; i < change.chords().size(); i++) {
            List<NoteName> tones = change.now(i).tones();
            line.add(tones.get(3));
        }
        return line(change, line);
    }

    /** From the fifth up: fifth, raised fifth, sixth, seventh. */
    private static Phrase rising(Change change) {
        Chord standing = change.old(0);
        List<NoteName> line = new ArrayList<>(List.of(change.now(0).tones().get(2)));
        for (int i = 1; i < change.chords().size(); i++) {
            change.now(i).tones().stream().filter(tone -> !standing.holds(tone)).forEach(line::add);
        }
        return line(change, line);
    }

    private static final List<Idiom> CLICHES = List.of(
            Idiom.named(LINE_CLICHE, CHROMATIC, LINES)
                    .worth(9, 1)
                    .where(IdiomCondition.TWO_BARS)
                    .because(LineIdioms::falling)
                    .inMajor(
                            "[I] ii -> =,Imaj7,I7,Iadd6",
                            "[I] V -> =,Imaj7,I7,Iadd6",
                            "[I] vi -> =,Imaj7,I7,Iadd6",
                            "[vi] -> =,vimaj7,vi7,viadd6",
                            "[ii] -> =,iimaj7,ii7,iiadd6")
                    .inMinor("[i] -> =,imaj7,i7,iadd6", "[iv] -> =,ivmaj7,iv7,ivadd6"),
            Idiom.named(LINE_CLICHE, CHROMATIC, LINES)
                    .worth(9, 1)
                    .because(LineIdioms::falling)
                    .inMajor(
                            "[I I] IV -> =,Imaj7 I7",
                            "[I I] ii -> =,Imaj7 I7,Iadd6",
                            "[I I] V -> =,Imaj7 I7,Iadd6",
                            "[I I] vi -> =,Imaj7 I7,Iadd6",
                            "[I I I I] -> = Imaj7 I7 Iadd6",
                            "[vi vi] -> =,vimaj7 vi7,viadd6",
                            "[vi vi vi vi] -> = vimaj7 vi7 viadd6")
                    .inMinor("[i i] -> =,imaj7 i7,iadd6", "[i i i i] -> = imaj7 i7 iadd6"),
            Idiom.named(LINE_CLICHE, CHROMATIC, LINES)
                    .worth(7, 1)
                    .where(IdiomCondition.A_BAR)
                    .because(LineIdioms::falling)
                    .inMajor("[I] IV -> =,Imaj7,I7", "[ii] V -> =,iimaj7,ii7")
                    .inMinor("[i] IV -> =,imaj7,i7", "[i] iv -> =,imaj7,i7"),
            Idiom.named(RISING_LINE, CHROMATIC, LINES)
                    .worth(7, 2)
                    .where(IdiomCondition.A_BAR)
                    .because(LineIdioms::rising)
                    .inMajor("[I] IV -> =,I+,Iadd6,I7")
                    .inMinor("[i] iv -> =,VI6,iadd6,i7"));

    static Phrase pedal(Change change) {
        return Phrase.sentence(
                "{0} stays in the bass while the chords move above it.",
                change.now(0).bass());
    }

    private static final List<Idiom> PEDALS = List.of(
            Idiom.named("pedal on 1", BASS, PEDAL)
                    .worth(5, 0)
                    .because(LineIdioms::pedal)
                    .inMajor(
                            "I [IV] I -> IV/1",
                            "I [V] I -> V/1|V7/1",
                            "I [IV V] I -> IV/1 V/1|V7/1",
                            "I [ii V] I -> ii/1|ii7/1 V/1|V7/1",
                            "I [IV iv] I -> IV/1 iv/1")
                    .inMinor(
                            "i [iv] i -> iv/1",
                            "i [V] i -> V/1|V7/1",
                            "i [iv V] i -> iv/1 V/1|V7/1",
                            "i [VI VII] i -> VI/1 VII/1",
                            "i [VII] i -> VII/1"),
            Idiom.named("pedal on 5", BASS, PEDAL)
                    .worth(5, 1)
                    .because(LineIdioms::pedal)
                    .inMajor(
                            "[IV] V -> IV/5",
                            "[ii] V -> ii/5|ii7/5",
                            "V [IV] V -> IV/5",
                            "V [I] V -> I/5",
                            "[I IV] V -> I/5 IV/5",
                            "[IV I] V -> IV/5 I/5")
                    .inMinor("[iv] V -> iv/5", "V [i] V -> i/5", "[iio] V -> iio/5"));

    private static Phrase bassLine(Change change) {
        List<NoteName> line = new ArrayList<>();
        if (change.before() != null
                && fallsByStep(change.before().bass(), change.now(0).bass())) {
            line.add(change.before().bass());
        }
        change.chords().forEach(event -> line.add(event.chord().bass()));
        if (change.after() != null
                && fallsByStep(line.get(line.size() - 1), change.after().bass())) {
            line.add(change.after().bass());
        }
        return Phrase.sentence("The bass comes down step by step: {0}.", Phrase.row(line));
    }

    private static boolean fallsByStep(NoteName from, NoteName to) {
        int down = to.to(from).semitones();
        return down == 1 || down == 2;
    }

    private static final List<Idiom> BASSES = List.of(
            Idiom.named("chromatic descent", BASS, BASS_LINES)
                    .worth(8, 1)
                    .because(LineIdioms::bassLine)
                    .inMajor("[I V IV] -> = V6 v6,IV6", "I [V IV] -> V6 v6,IV6")
                    .inMinor("[i VII] VI -> =,V6 i42,IV6", "i [VII] VI -> i42,IV6"),
            Idiom.named("chromatic descent", BASS, BASS_LINES)
                    .worth(7, 1)
                    .where(IdiomCondition.A_BAR)
                    .because(LineIdioms::bassLine)
                    .inMajor("[I] vi -> =,Imaj42,I42")
                    .inMinor("[i] VI -> =,V6,i42,IV6"),
            Idiom.named("stepping bass", BASS, TextbookPage.first("popRockHarmony"))
                    .worth(7, 0)
                    .because(LineIdioms::bassLine)
                    .inMajor(
                            "I [V] vi -> V6",
                            "I [V vi] IV -> V6 =",
                            "vi [V] IV -> I64",
                            "vi [iii] IV -> iii6",
                            "IV [I] ii -> I6")
                    .inMinor("i [V] VI -> V6"));

    private static final TextbookPage THIRDS = TextbookPage.lesson("19b");

    private static final List<Idiom> MEDIANTS = List.of(
            Idiom.named("mediant", CHROMATIC, THIRDS)
                    .worth(9, 3)
                    .because(LineIdioms::aThirdAway)
                    .inMajor("I [iii] IV -> III"),
            Idiom.named("mediant", CHROMATIC, THIRDS)
                    .worth(7, 3)
                    .because(LineIdioms::aThirdAway)
                    .inMajor(
                            "I [] IV -> III",
                            "I [vi] * -> VI",
                            "I [iii] * -> bIII",
                            "I [] I -> bVI",
                            "I [] I -> bIII",
                            "I [vi] * -> bVI")
                    .inMinor("i [VI] * -> #vi", "i [III] * -> iii"));

    private static Phrase aThirdAway(Change change) {
        List<NoteName> shared = VoiceLeading.commonTones(change.before(), change.now(0));
        return Phrase.counted(
                shared.size(),
                "{0} stands a third from {1}; {2} stays, and all else changes.",
                "{0} stands a third from {1}; {2} stay, and all else changes.",
                change.now(0),
                change.before(),
                Phrase.list(shared));
    }
}
