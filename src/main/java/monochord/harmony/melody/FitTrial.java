package monochord.harmony.melody;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import monochord.harmony.Progression;
import monochord.theory.Key;
import monochord.theory.note.Beats;

/**
 * A tune over a progression in which other chords are tried in the time of some, by the rules of {@link Fit}, without
 * judging the whole tune anew.
 */
public final class FitTrial {
    /** Notes beside the ones under the chords that are tried, whose roles may hang on them. */
    private static final int BESIDE = 1;

    private final Melody melody;
    private final Key key;
    private final Beats bar;
    private final Beats length;
    private final int chords;
    private final List<ChordSpan> spans;
    private final List<NoteOverChord> stretches;
    /** Of each chord of each round the first and the last stretch over it; -1 for none. */
    private final int[] firstOver;

    private final int[] lastOver;

    private FitTrial(Melody melody, Progression progression) {
        this.melody = melody;
        this.key = progression.key();
        this.bar = Fit.bar(melody, progression);
        this.length = bar.times(progression.bars().size());
        this.spans = NotesOverChords.rounds(melody, progression, bar);
        this.chords = ChordSpan.of(progression, bar).size();
        this.stretches = NotesOverChords.of(melody, bar, spans);
        this.firstOver = new int[spans.size()];
        this.lastOver = new int[spans.size()];
        Arrays.fill(firstOver, -1);
        Arrays.fill(lastOver, -1);
        index();
    }

    private void index() {
        int number = 0;
        for (int i = 0; i < stretches.size(); i++) {
            ChordSpan span = stretches.get(i).span();
            if (span == null) {
                continue;
            }
            while (!spans.get(number).equals(span)) {
                number++;
            }
            firstOver[number] = firstOver[number] < 0 ? i : firstOver[number];
            lastOver[number] = i;
        }
    }

    public static FitTrial of(Melody melody, Progression progression) {
        return new FitTrial(melody, progression);
    }

    /**
     * What the notes that clash weigh more than before if other chords sound in the time of some; below 0 for less.
     *
     * @param first the first of the chords that are struck, from 0, whose time is taken
     * @param last the last one
     * @param instead what sounds in that time, counted in bars from the start of the progression
     */
    public int added(int first, int last, List<ChordSpan> instead) {
        return sum(first, last, instead, FitTrial::clash);
    }

    /**
     * What the notes weigh more than before that last a beat or more and rub against the chord, though they pass for an
     * embellishment; below 0 for less.
     */
    public int addedRubs(int first, int last, List<ChordSpan> instead) {
        return sum(first, last, instead, FitTrial::rub);
    }

    private int sum(int first, int last, List<ChordSpan> instead, Weighing weighing) {
        int added = 0;
        for (int round = 0; round * chords < spans.size(); round++) {
            TriedNotes window = window(round, first, last);
            if (window != null) {
                added += sum(window.with(instead), window, weighing) - sum(window.asItIs(), window, weighing);
            }
        }
        return added;
    }

    /** What a stretch counts by its role. */
    private interface Weighing {
        int of(NoteOverChord stretch, NoteRole role);
    }

    private static int clash(NoteOverChord stretch, NoteRole role) {
        return role == NoteRole.CLASH ? stretch.weight() : 0;
    }

    private static int rub(NoteOverChord stretch, NoteRole role) {
        boolean rubs = role != NoteRole.CLASH
                && role != NoteRole.FREE
                && stretch.beats().compareTo(Beats.ONE) >= 0
                && stretch.standing() == Standing.CLASH;
        return rubs ? stretch.weight() : 0;
    }

    /** The notes in that time that would clash, in every round, each with the nearest that would fit. */
    public List<FitNote> clashes(int first, int last, List<ChordSpan> instead) {
        List<FitNote> clashes = new ArrayList<>();
        for (int round = 0; round * chords < spans.size(); round++) {
            TriedNotes window = window(round, first, last);
            if (window != null) {
                addClashes(clashes, window.with(instead), window);
            }
        }
        return clashes;
    }

    private void addClashes(List<FitNote> clashes, List<NoteOverChord> tried, TriedNotes window) {
        for (int i = 0; i < tried.size(); i++) {
            NoteOverChord here = tried.get(i);
            if (window.isUnder(here) && role(tried, i) == NoteRole.CLASH) {
                clashes.add(here.judged(NoteRole.CLASH, key));
            }
        }
    }

    private static int sum(List<NoteOverChord> tried, TriedNotes window, Weighing weighing) {
        int sum = 0;
        for (int i = 0; i < tried.size(); i++) {
            boolean counts = window.isJudged(tried.get(i).note());
            sum += counts ? weighing.of(tried.get(i), role(tried, i)) : 0;
        }
        return sum;
    }

    private static NoteRole role(List<NoteOverChord> tried, int i) {
        return tried.get(i).span() == null
                ? NoteRole.FREE
                : Fitting.role(tried.get(i), Fitting.before(tried, i), Fitting.after(tried, i));
    }

    /** @return null where no note sounds in that time */
    private TriedNotes window(int round, int first, int last) {
        int from = -1;
        int to = -1;
        for (int at = first; at <= last; at++) {
            int number = round * chords + at;
            if (firstOver[number] >= 0) {
                from = from < 0 ? firstOver[number] : from;
                to = lastOver[number];
            }
        }
        return from < 0
                ? null
                : new TriedNotes(
                        round,
                        first,
                        last,
                        stretches.get(from).note(),
                        stretches.get(to).note());
    }

    /** The notes over some chords of one round, with those beside them. */
    private final class TriedNotes {
        private final int round;
        private final int first;
        private final int last;
        private final int fromNote;
        private final int toNote;

        TriedNotes(int round, int first, int last, int fromNote, int toNote) {
            this.round = round;
            this.first = first;
            this.last = last;
            this.fromNote = fromNote;
            this.toNote = toNote;
        }

        boolean isJudged(int note) {
            return note >= fromNote - BESIDE && note <= toNote + BESIDE;
        }

        boolean isUnder(NoteOverChord stretch) {
            Beats start = spans.get(round * chords + first).start();
            Beats end = spans.get(round * chords + last).end();
            return stretch.span() != null
                    && stretch.span().start().compareTo(start) >= 0
                    && stretch.span().start().compareTo(end) < 0;
        }

        List<NoteOverChord> asItIs() {
            return cut(spans);
        }

        List<NoteOverChord> with(List<ChordSpan> instead) {
            List<ChordSpan> all = new ArrayList<>(spans.subList(0, round * chords + first));
            for (ChordSpan span : instead) {
                Beats start = span.start().times(bar.numerator()).dividedInto(bar.denominator());
                Beats beats = span.beats().times(bar.numerator()).dividedInto(bar.denominator());
                all.add(new ChordSpan(first, span.chord(), start.plus(length.times(round)), beats));
            }
            all.addAll(spans.subList(round * chords + last + 1, spans.size()));
            return cut(all);
        }

        private List<NoteOverChord> cut(List<ChordSpan> under) {
            int from = Math.max(0, fromNote - 2 * BESIDE);
            int to = Math.min(melody.notes().size() - 1, toNote + 2 * BESIDE);
            return NotesOverChords.of(melody, bar, under, from, to);
        }
    }
}
