package monochord.view.staff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Pitch;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.MusicSign;
import monochord.view.drawn.Typeface;

/** A column with its notes set, and the room it needs. Its heads begin at x 0. */
final class SetColumn {
    /** The size of symbols and numerals. */
    static final double WORDS = 2;
    /** The size of words that are sung. */
    static final double SUNG = 1.8;

    private static final double GAP = 0.7;
    private static final double VOICES_APART = 0.15;
    /** Half of a head, under which a syllable has its middle. */
    private static final double HALF_HEAD = 0.59;
    /** How far the rest of one of two voices is moved. */
    private static final double REST_MOVED = 2;

    private final StaffColumn column;
    private final List<List<ChordOnStaff>> chords = List.of(new ArrayList<>(), new ArrayList<>());
    private final List<List<Drawn>> fixed = List.of(new ArrayList<>(), new ArrayList<>());
    private final double symbols;
    private final double sung;
    private Box box = new Box(0, 0, 0, 0);

    /**
     * @param set its events
     * @param memories what is to be written before a note, of each staff
     */
    SetColumn(
            StaffColumn column,
            List<SetEvent> set,
            StaffMusic.State state,
            List<AccidentalMemory> memories,
            Reader reader) {
        this.column = column;
        for (int staff = 0; staff < state.clefs().size(); staff++) {
            set(set, staff, state.clefs().get(staff), memories.get(staff));
        }
        this.symbols = Math.max(wide(column.above(), WORDS, reader), wide(column.below(), WORDS, reader));
        this.sung = column.events().stream()
                .flatMap(event -> event.sung().stream())
                .mapToDouble(syllable -> wide(syllable, SUNG, reader))
                .max()
                .orElse(0);
    }

    private static double wide(Phrase words, double size, Reader reader) {
        return words.isEmpty() ? 0 : Typeface.REGULAR.width(words.in(reader).plain()) * size;
    }

    private void set(List<SetEvent> events, int staff, Clef clef, AccidentalMemory memory) {
        List<Box> taken = new ArrayList<>();
        List<Pitch> sounding = new ArrayList<>();
        List<Pitch> tied = new ArrayList<>();
        for (SetEvent event : events) {
            if (!event.event().isOn(staff)) {
                continue;
            }
            if (event.event().kind() == StaffEvent.Kind.REST) {
                rest(event, staff, taken);
                continue;
            }
            ChordOnStaff chord = new ChordOnStaff(clef, event, shift(event, clef, staff));
            chords.get(staff).add(chord);
            fixed.get(staff).addAll(chord.drawn());
            taken.addAll(chord.taken());
            sounding.addAll(chord.pitches());
            tied.addAll(event.tiedInto());
        }
        List<Pitch> needed = memory.needed(sounding, tied).stream()
                .sorted(Comparator.comparingInt(Pitch::staffPosition))
                .toList();
        fixed.get(staff).addAll(new AccidentalColumn(clef, taken).set(needed));
        taken.forEach(one -> box = box.around(one));
    }

    private void rest(SetEvent event, int staff, List<Box> taken) {
        NoteLength length = event.event().length();
        MusicSign sign = length.value().rest();
        double moved = event.shared() ? event.event().voice().second() ? REST_MOVED : -REST_MOVED : 0;
        double y = moved + (length.value() == NoteValue.WHOLE ? 1 : 2);
        Drawn.Sign rest = new Drawn.Sign("rest", Phrase.of("rest"), sign, 0, y);
        fixed.get(staff).add(rest);
        taken.add(rest.box());
        MusicSign dot = MusicSign.named("augmentationDot");
        for (int i = 0; i < length.dots(); i++) {
            double x = rest.box().right() + 0.3 + i * 0.7;
            Drawn.Sign dotted = new Drawn.Sign("dot", Phrase.of("dotted"), dot, x, moved + 1.5);
            fixed.get(staff).add(dotted);
            taken.add(dotted.box());
        }
    }

    /** How far the second voice gives way where its heads would meet those of the first, or pass them. */
    private double shift(SetEvent event, Clef clef, int staff) {
        List<ChordOnStaff> before = chords.get(staff);
        if (before.isEmpty()
                || before.get(0).pitches().isEmpty()
                || event.event().pitches().isEmpty()) {
            return 0;
        }
        ChordOnStaff first = before.get(0);
        List<Pitch> own = event.event().pitches();
        int lowest = first.pitches().get(0).staffPosition();
        int highest = own.stream().mapToInt(Pitch::staffPosition).max().orElse(0);
        boolean oneHead = highest == lowest
                && own.size() == 1
                && first.pitches().size() == 1
                && own.equals(first.pitches())
                && event.event().length().value().head()
                        == first.set().event().length().value().head()
                && event.event().length().dots() == first.set().event().length().dots();
        return highest < lowest - 1 || oneHead ? 0 : first.heads().right() + VOICES_APART;
    }

    StaffColumn column() {
        return column;
    }

    List<ChordOnStaff> chords(int staff) {
        return chords.get(staff);
    }

    /** Heads, rests, accidentals and what stays where it is whatever comes behind. */
    List<Drawn> fixed(int staff) {
        return fixed.get(staff);
    }

    /** How far what it holds reaches to the left of its heads. */
    double left() {
        return Math.max(-box.left(), sung / 2 - HALF_HEAD);
    }

    /** From the leftmost sign to where the next column may begin. */
    double width(double room) {
        double words = Math.max(symbols, sung > 0 ? HALF_HEAD + sung / 2 : 0);
        return left() + Math.max(Math.max(box.right() + GAP, room), words > 0 ? words + GAP : 0);
    }

    /** The middle of the heads, where a syllable has its own. */
    static double middle(double x) {
        return x + HALF_HEAD;
    }
}
