package monochord.song.musicxml;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.audiveris.proxymusic.Bass;
import org.audiveris.proxymusic.DegreeTypeValue;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Inversion;
import org.audiveris.proxymusic.Kind;
import org.audiveris.proxymusic.KindValue;
import org.audiveris.proxymusic.Numeral;
import org.audiveris.proxymusic.Root;

/**
 * The chord of a harmony element, the first where it holds several.
 *
 * <p>An added degree counts from the dominant scale on the root, an altered one from the tone that is there. Source: W3C
 * MusicXML 4.0, {@code kind-value}, {@code degree-alter}, {@code inversion}.
 */
final class HarmonyChord {
    private static final Map<KindValue, String> KINDS = new EnumMap<>(Map.ofEntries(
            Map.entry(KindValue.MAJOR, ""),
            Map.entry(KindValue.MINOR, "m"),
            Map.entry(KindValue.AUGMENTED, "aug"),
            Map.entry(KindValue.DIMINISHED, "dim"),
            Map.entry(KindValue.DOMINANT, "7"),
            Map.entry(KindValue.MAJOR_SEVENTH, "maj7"),
            Map.entry(KindValue.MINOR_SEVENTH, "m7"),
            Map.entry(KindValue.DIMINISHED_SEVENTH, "dim7"),
            Map.entry(KindValue.AUGMENTED_SEVENTH, "7#5"),
            Map.entry(KindValue.HALF_DIMINISHED, "m7b5"),
            Map.entry(KindValue.MAJOR_MINOR, "m(maj7)"),
            Map.entry(KindValue.MAJOR_SIXTH, "6"),
            Map.entry(KindValue.MINOR_SIXTH, "m6"),
            Map.entry(KindValue.DOMINANT_NINTH, "9"),
            Map.entry(KindValue.MAJOR_NINTH, "maj9"),
            Map.entry(KindValue.MINOR_NINTH, "m9"),
            Map.entry(KindValue.DOMINANT_11_TH, "11"),
            Map.entry(KindValue.MAJOR_11_TH, "maj11"),
            Map.entry(KindValue.MINOR_11_TH, "m11"),
            Map.entry(KindValue.DOMINANT_13_TH, "13"),
            Map.entry(KindValue.MAJOR_13_TH, "maj13"),
            Map.entry(KindValue.MINOR_13_TH, "m13"),
            Map.entry(KindValue.SUSPENDED_SECOND, "sus2"),
            Map.entry(KindValue.SUSPENDED_FOURTH, "sus4"),
            Map.entry(KindValue.POWER, "5")));

    private final Key key;
    private NoteName root;
    private KindValue kind;
    private Bass bass;
    private int inversion;
    private List<NoteName> tones = List.of();

    private HarmonyChord(Key key) {
        this.key = key;
    }

    /**
     * None for a harmony that is no chord with a symbol: no chord, a pedal, a chord by its function alone.
     *
     * @param key for roots written as numerals
     */
    static Optional<Chord> of(Harmony harmony, Key key) throws SheetFault {
        HarmonyChord reading = new HarmonyChord(key);
        for (Object part : harmony.getHarmonyChord()) {
            boolean second = (part instanceof Root || part instanceof Numeral) && reading.root != null;
            if (second) {
                break;
            }
            reading.take(part);
        }
        return reading.chord();
    }

    private void take(Object part) throws SheetFault {
        if (part instanceof Root one && one.getRootStep() != null) {
            root = Figures.note(one.getRootStep().getValue(), one.getRootAlter());
        } else if (part instanceof Numeral one && one.getNumeralRoot() != null) {
            root = numeralRoot(one);
        } else if (part instanceof Kind one) {
            kind = one.getValue();
            tones = kindTones();
        } else if (part instanceof Bass one) {
            bass = one;
        } else if (part instanceof Inversion one) {
            inversion = Figures.whole(one.getValue(), 6, Phrase.of("an inversion"));
        } else if (part instanceof org.audiveris.proxymusic.Degree one && root != null) {
            degree(one);
        }
    }

    private NoteName numeralRoot(Numeral numeral) throws SheetFault {
        int number = numeral.getNumeralRoot().getValue();
        if (number < 1 || number > 7) {
            return null;
        }
        int alter = numeral.getNumeralAlter() == null
                ? 0
                : Figures.whole(numeral.getNumeralAlter().getValue(), 3, Phrase.of("an accidental"));
        NoteName own = key.note(number);
        return NoteName.of(own.letter(), own.alteration() + alter);
    }

    private List<NoteName> kindTones() {
        if (root == null || kind == null) {
            return List.of();
        }
        String suffix = KINDS.get(kind);
        return suffix != null
                ? new ArrayList<>(new Chord(root, ChordKind.parse(suffix)).tones())
                : kind == KindValue.OTHER ? new ArrayList<>(List.of(root)) : List.of();
    }

    private void degree(org.audiveris.proxymusic.Degree degree) throws SheetFault {
        if (degree.getDegreeValue() == null || degree.getDegreeType() == null || tones.isEmpty()) {
            return;
        }
        int number = Math.abs(Figures.whole(degree.getDegreeValue().getValue(), 13, Phrase.of("a chord degree")));
        int alter = degree.getDegreeAlter() == null
                ? 0
                : Figures.whole(degree.getDegreeAlter().getValue(), 3, Phrase.of("an accidental"));
        int step = Math.max(0, number - 1) % 7 + 1;
        Optional<NoteName> there =
                tones.stream().filter(tone -> stepOf(tone) == step).findFirst();
        DegreeTypeValue type = degree.getDegreeType().getValue();
        if (type != DegreeTypeValue.ADD) {
            there.ifPresent(tones::remove);
        }
        if (type == DegreeTypeValue.ALTER && there.isPresent()) {
            NoteName old = there.get();
            tones.add(NoteName.of(old.letter(), old.alteration() + alter));
        } else if (type != DegreeTypeValue.SUBTRACT) {
            tones.add(root.plus(Degree.of(step, alter - (step == 7 ? 1 : 0)).interval()));
        }
    }

    private int stepOf(NoteName tone) {
        return root.to(tone).number();
    }

    private Optional<Chord> chord() throws SheetFault {
        if (root == null || tones.isEmpty()) {
            return Optional.empty();
        }
        Optional<ChordKind> found = ChordKind.of(root, tones);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Chord(root, found.get(), bassNote(found.get())));
    }

    private NoteName bassNote(ChordKind found) throws SheetFault {
        if (bass != null && bass.getBassStep() != null) {
            return Figures.note(bass.getBassStep().getValue(), bass.getBassAlter());
        }
        List<Interval> intervals = found.intervals();
        return inversion > 0 && inversion < intervals.size() ? root.plus(intervals.get(inversion)) : root;
    }
}
