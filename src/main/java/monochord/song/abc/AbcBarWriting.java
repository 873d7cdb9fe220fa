package monochord.song.abc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.song.SectionMusic;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * Writes the notes and chords of one bar. What no halving of a note comes to, such as thirds of a beat, is a tuplet, for a
 * length in ABC is halved as often as need be and nothing else. Source: the ABC standard 2.1, sections 4.3 and 4.13.
 */
final class AbcBarWriting {
    private static final String REST = "z";
    private static final int MOST_IN_A_TUPLET = 9;
    private static final int MOST_NOTES = 32;

    private final SectionMusic.SongBar bar;
    private final boolean holdsOn;
    private final AbcKey key;
    private final Map<Character, Integer> accidentals = new HashMap<>();
    private final List<CutNote> notes = new ArrayList<>();

    /**
     * A note or rest, or what of it lies between two chords.
     *
     * @param chords written before it
     * @param isFirst whether it begins here
     */
    private record CutNote(String chords, String name, Beats beats, boolean ties, boolean isFirst) {}

    /** @param holdsOn whether the last note goes on in the next bar */
    AbcBarWriting(SectionMusic.SongBar bar, boolean holdsOn, AbcKey key) {
        this.bar = bar;
        this.holdsOn = holdsOn;
        this.key = key;
        cut();
    }

    /** For each note whether it only goes on with the one before, which a chord or a bar line has cut. */
    List<Boolean> cuts() {
        return notes.stream()
                .filter(note -> !note.name().equals(REST))
                .map(note -> !note.isFirst())
                .toList();
    }

    String text() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < notes.size(); ) {
            int end = tupletEnd(i);
            long parts = end > i + 1 || oddPart(notes.get(i).beats()) > 1 ? tuplet(i, end) : 1;
            long time = parts > 1 ? time(parts) : 1;
            if (parts > 1) {
                out.append('(')
                        .append(parts)
                        .append(':')
                        .append(time)
                        .append(':')
                        .append(end - i);
            }
            for (CutNote note : notes.subList(i, end)) {
                write(note, note.beats().times(parts).dividedInto(time), out);
            }
            i = end;
        }
        return out.toString();
    }

    private void write(CutNote note, Beats beats, StringBuilder out) {
        String length = beats.equals(Beats.ONE)
                ? ""
                : beats.denominator() == 1 ? String.valueOf(beats.numerator()) : beats.toString();
        out.append(note.chords()).append(note.name()).append(length).append(note.ties() ? "- " : " ");
    }

    /** Into how many parts what begins here is divided; 1 where it is no tuplet that can be written. */
    private long tuplet(int from, int end) {
        long parts = notes.subList(from, end).stream()
                .mapToLong(note -> oddPart(note.beats()))
                .max()
                .orElse(1);
        return parts <= MOST_IN_A_TUPLET ? parts : 1;
    }

    /** In the time of so many: the power of two below. */
    private static long time(long parts) {
        return Long.highestOneBit(parts - 1);
    }

    /** What is left of a denominator when it is halved as often as that goes. */
    private static long oddPart(Beats beats) {
        return beats.denominator() >> Long.numberOfTrailingZeros(beats.denominator());
    }

    /** Behind the notes that together come to a length without a tuplet; behind one note that needs none. */
    private int tupletEnd(int from) {
        long parts = oddPart(notes.get(from).beats());
        if (parts == 1 || parts > MOST_IN_A_TUPLET) {
            return from + 1;
        }
        Beats sum = Beats.ZERO;
        int end = from;
        do {
            sum = sum.plus(notes.get(end++).beats());
        } while (oddPart(sum) > 1
                && end < notes.size()
                && end - from < MOST_NOTES
                && parts % oddPart(notes.get(end).beats()) == 0);
        return end;
    }

    /** A note or rest is cut where a chord begins in it, and tied. */
    private void cut() {
        Beats now = Beats.ZERO;
        for (int i = 0; i < bar.pieces(); i++) {
            if (now.compareTo(bar.start(i)) < 0) {
                note(REST, now, bar.start(i), false, true);
            }
            boolean ties = holdsOn && i + 1 == bar.pieces() && bar.end(i).equals(bar.beats());
            note(name(bar.pitch(i)), bar.start(i), bar.end(i), ties, i > 0 || !bar.beginsHeld());
            now = bar.end(i);
        }
        if (now.compareTo(bar.beats()) < 0) {
            note(REST, now, bar.beats(), false, true);
        }
    }

    private void note(String name, Beats from, Beats to, boolean ties, boolean begins) {
        Beats start = from;
        StringBuilder chords = new StringBuilder();
        for (SectionMusic.Struck chord : bar.chords()) {
            if (!chord.held()
                    && chord.start().compareTo(from) >= 0
                    && chord.start().compareTo(to) < 0) {
                if (chord.start().compareTo(start) > 0) {
                    add(chords, name, chord.start().minus(start), !name.equals(REST), begins && start.equals(from));
                    start = chord.start();
                }
                chords.append('"').append(chord.chord()).append('"');
            }
        }
        add(chords, name, to.minus(start), ties, begins && start.equals(from));
    }

    private void add(StringBuilder chords, String name, Beats beats, boolean ties, boolean isFirst) {
        notes.add(new CutNote(chords.toString(), name, beats, ties, isFirst));
        chords.setLength(0);
    }

    private String name(Pitch pitch) {
        char letter = pitch.name().letter();
        int alteration = pitch.name().alteration();
        int holds = accidentals.getOrDefault(letter, key.alterations().get(letter));
        accidentals.put(letter, alteration);
        String sign = alteration == holds
                ? ""
                : switch (alteration) {
                    case 0 -> "=";
                    case 1 -> "^";
                    case 2 -> "^^";
                    case -1 -> "_";
                    default -> "__";
                };
        int octave = pitch.octave();
        String name = octave >= 5 ? String.valueOf(Character.toLowerCase(letter)) : String.valueOf(letter);
        return sign + name + (octave >= 5 ? "'".repeat(octave - 5) : ",".repeat(4 - octave));
    }
}
