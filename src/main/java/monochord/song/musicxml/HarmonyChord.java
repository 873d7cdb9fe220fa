package monochord.song.musicxml;

import java.util.ArrayList;
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

/**
 * The chord of a harmony element, the first where it holds several.
 *
 * <p>An added degree counts from the dominant scale on the root, an altered one from the tone that is there. Source: W3C
 * MusicXML 4.0, {@code kind-value}, {@code degree-alter}, {@code inversion}.
 */
final class HarmonyChord {
    static final Map<String, String> KINDS = Map.ofEntries(
            Map.entry("major", ""),
            Map.entry("minor", "m"),
            Map.entry("augmented", "aug"),
            Map.entry("diminished", "dim"),
            Map.entry("dominant", "7"),
            Map.entry("major-seventh", "maj7"),
            Map.entry("minor-seventh", "m7"),
            Map.entry("diminished-seventh", "dim7"),
            Map.entry("augmented-seventh", "7#5"),
            Map.entry("half-diminished", "m7b5"),
            Map.entry("major-minor", "m(maj7)"),
            Map.entry("major-sixth", "6"),
            Map.entry("minor-sixth", "m6"),
            Map.entry("dominant-ninth", "9"),
            Map.entry("major-ninth", "maj9"),
            Map.entry("minor-ninth", "m9"),
            Map.entry("dominant-11th", "11"),
            Map.entry("major-11th", "maj11"),
            Map.entry("minor-11th", "m11"),
            Map.entry("dominant-13th", "13"),
            Map.entry("major-13th", "maj13"),
            Map.entry("minor-13th", "m13"),
            Map.entry("suspended-second", "sus2"),
            Map.entry("suspended-fourth", "sus4"),
            Map.entry("power", "5"));

    private final Key key;
    private NoteName root;
    private String kind;
    private SheetElement bass;
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
    static Optional<Chord> of(SheetElement harmony, Key key) throws SheetFault {
        HarmonyChord reading = new HarmonyChord(key);
        for (SheetElement part : harmony.parts()) {
            boolean second = (part.name().equals("root") || part.name().equals("numeral")) && reading.root != null;
            if (second) {
                break;
            }
            reading.take(part);
        }
        return reading.chord();
    }

    private void take(SheetElement part) throws SheetFault {
        switch (part.name()) {
            case "root" ->
                root = part.has("root-step") ? Figures.note(part.text("root-step"), part.text("root-alter")) : root;
            case "numeral" -> root = part.has("numeral-root") ? numeralRoot(part) : root;
            case "kind" -> {
                kind = part.text();
                tones = kindTones();
            }
            case "bass" -> bass = part;
            case "inversion" -> inversion = Figures.whole(part.text(), 6, Phrase.of("an inversion"));
            case "degree" -> degree(part);
            default -> {}
        }
    }

    private NoteName numeralRoot(SheetElement numeral) throws SheetFault {
        int number = Figures.whole(numeral.text("numeral-root"), 7, Phrase.of("a numeral"));
        if (number < 1) {
            return null;
        }
        NoteName own = key.note(number);
        return NoteName.of(own.letter(), own.alteration() + Figures.accidental(numeral.text("numeral-alter")));
    }

    private List<NoteName> kindTones() {
        if (root == null || kind == null) {
            return List.of();
        }
        String suffix = KINDS.get(kind);
        return suffix != null
                ? new ArrayList<>(new Chord(root, ChordKind.parse(suffix)).tones())
                : kind.equals("other") ? new ArrayList<>(List.of(root)) : List.of();
    }

    private void degree(SheetElement degree) throws SheetFault {
        String type = degree.text("degree-type");
        if (root == null || !degree.has("degree-value") || type == null || tones.isEmpty()) {
            return;
        }
        int number = Math.abs(Figures.whole(degree.text("degree-value"), 13, Phrase.of("a chord degree")));
        int alter = Figures.accidental(degree.text("degree-alter"));
        int step = Math.max(0, number - 1) % 7 + 1;
        Optional<NoteName> there =
                tones.stream().filter(tone -> stepOf(tone) == step).findFirst();
        if (!type.equals("add")) {
            there.ifPresent(tones::remove);
        }
        if (type.equals("alter") && there.isPresent()) {
            NoteName old = there.get();
            tones.add(NoteName.of(old.letter(), old.alteration() + alter));
        } else if (!type.equals("subtract")) {
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
        if (bass != null && bass.has("bass-step")) {
            return Figures.note(bass.text("bass-step"), bass.text("bass-alter"));
        }
        List<Interval> intervals = found.intervals();
        return inversion > 0 && inversion < intervals.size() ? root.plus(intervals.get(inversion)) : root;
    }
}
