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
public final class Trial {
    /** Notes beside the ones under the chords that are tried, whose roles may hang on them. */
    private static final int BESIDE = 1;

    private final Melody melody;
    private final Key key;
    private final Beats bar;
    private final Beats length;
    private final int chords;
    private final List<ChordSpan> spans;
    private final List<Stretch> stretches;
    /** Of each chord of each round the first and the last stretch over it; -1 for none. */
    private final int[] firstOver;

    private final int[] lastOver;

    private Trial(Melody melody, Progression progression) {
        this.melody = melody;
        this.key = progression.key();
        this.bar = Fit.bar(melody, progression);
        this.length = bar.times(progression.bars().size());
        this.spans = Stretches.rounds(melody, progression, bar);
        this.chords = ChordSpan.of(progression, bar).size();
        this.stretches = Stretches.of(melody, bar, spans);
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

    public static Trial of(Melody melody, Progression progression) {
        return new Trial(melody, progression);
    }

    /**
     * What the notes that clash weigh more than before if other chords sound in the time of some; below 0 for less.
     *
     * @param first the first of the chords that are struck, from 0, whose time is taken
     * @param last the last one
     * @param instead what sounds in that time, counted in bars from the start of the progression
     */
    public int added(int first, int last, List<ChordSpan> instead) {
        return sum(first, last, instead, Trial::clash);
    }

    /**
     * What the notes weigh more than before that last a beat or more and rub against the chord, though they pass for an
     * embellishment; below 0 for less.
     */
    public int addedRubs(int first, int last, List<ChordSpan> instead) {
        return sum(first, last, instead, Trial::rub);
    }

    private int sum(int first, int last, List<ChordSpan> instead, Weighing weighing) {
        int added = 0;
        for (int round = 0; round * chords < spans.size(); round++) {
            Window window = window(round, first, last);
            if (window != null) {
                added += sum(window.with(instead), window, weighing) - sum(window.asItIs(), window, weighing);
            }
        }
        return added;
    }

    /** What a stretch counts by its role. */
    private interface Weighing {
        int of(Stretch stretch, NoteRole role);
    }

    private static int clash(Stretch stretch, NoteRole role) {
        return role == NoteRole.CLASH ? stretch.weight() : 0;
    }

    private static int rub(Stretch stretch, NoteRole role) {
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
            Window window = window(round, first, last);
            if (window != null) {
                addClashes(clashes, window.with(instead), window);
            }
        }
        return clashes;
    }

    private void addClashes(List<FitNote> clashes, List<Stretch> tried, Window window) {
        for (int i = 0; i < tried.size(); i++) {
            Stretch here = tried.get(i);
            if (window.isUnder(here) && role(tried, i) == NoteRole.CLASH) {
                clashes.add(here.judged(NoteRole.CLASH, key));
            }
        }
    }

    private static int sum(List<Stretch> tried, Window window, Weighing weighing) {
        int sum = 0;
        for (int i = 0; i < tried.size(); i++) {
            boolean counts = window.isJudged(tried.get(i).note());
            sum += counts ? weighing.of(tried.get(i), role(tried, i)) : 0;
        }
        return sum;
    }

    private static NoteRole role(List<Stretch> tried, int i) {
        return tried.get(i).span() == null
                ? NoteRole.FREE
                : Fitting.role(tried.get(i), Fitting.before(tried, i), Fitting.after(tried, i));
    }

    /** @return null where no note sounds in that time */
    private Window window(int round, int first, int last) {
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
                : new Window(
                        round,
                        first,
                        last,
                        stretches.get(from).note(),
                        stretches.get(to).note());
    }

    /** The notes over some chords of one round, with those beside them. */
    private final class Window {
        private final int round;
        private final int first;
        private final int last;
        private final int fromNote;
        private final int toNote;

        Window(int round, int first, int last, int fromNote, int toNote) {
            this.round = round;
            this.first = first;
            this.last = last;
            this.fromNote = fromNote;
            this.toNote = toNote;
        }

        boolean isJudged(int note) {
            return note >= fromNote - BESIDE && note <= toNote + BESIDE;
        }

        boolean isUnder(Stretch stretch) {
            Beats start = spans.get(round * chords + first).start();
            Beats end = spans.get(round * chords + last).end();
            return stretch.span() != null
                    && stretch.span().start().compareTo(start) >= 0
                    && stretch.span().start().compareTo(end) < 0;
        }

        List<Stretch> asItIs() {
            return cut(spans);
        }

        List<Stretch> with(List<ChordSpan> instead) {
            List<ChordSpan> all = new ArrayList<>(spans.subList(0, round * chords + first));
            for (ChordSpan span : instead) {
                Beats start = span.start().times(bar.numerator()).dividedInto(bar.denominator());
                Beats beats = span.beats().times(bar.numerator()).dividedInto(bar.denominator());
                all.add(new ChordSpan(first, span.chord(), start.plus(length.times(round)), beats));
            }
            all.addAll(spans.subList(round * chords + last + 1, spans.size()));
            return cut(all);
        }

        private List<Stretch> cut(List<ChordSpan> under) {
            int from = Math.max(0, fromNote - 2 * BESIDE);
            int to = Math.min(melody.notes().size() - 1, toNote + 2 * BESIDE);
            return Stretches.of(melody, bar, under, from, to);
        }
    }
}
