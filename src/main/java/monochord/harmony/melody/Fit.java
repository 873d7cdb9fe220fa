package monochord.harmony.melody;

import java.util.List;
import monochord.harmony.Progression;
import monochord.text.Phrase;
import monochord.theory.note.Beats;

/**
 * How a tune fits over a progression: what each of its notes does over the chord under it.
 *
 * <p>The tune begins with the first chord, its pick-up before it. A bar of the progression has the beats that {@link
 * Progression#beatsPerBar} says, or those of the tune's bars where both have bar lines. A tune that is longer goes round
 * the chords again, up to {@value #MOST_ROUNDS} times. A note across a change of chord is judged over each.
 *
 * <p>A note is <em>exposed</em> where it lasts a beat or more from the start of a bar or a chord, more than a beat from
 * the middle of a bar, or a beat and a half from anywhere. The roles, the first that holds:
 *
 * <ol>
 *   <li>a tone of the chord, or the bass;
 *   <li>suspension: it stood well over the chord before and goes on by step to a note that stands well;
 *   <li>anticipation: it lasts at most a beat, and comes again as a tone of the next chord;
 *   <li>where it is exposed: tension if it colours the chord; an appoggiatura if it is the fourth over a major third and
 *       falls by step to a tone of the chord; otherwise a clash;
 *   <li>passing, neighbour, escape or appoggiatura, by the notes on both sides; a rest of more than half a beat parts
 *       them;
 *   <li>tension if it colours the chord, otherwise a clash.
 * </ol>
 *
 * <p>The weight of a note is {@code strength · halves}: 4 at the start of a bar or a chord, 3 on the middle beat of a bar
 * of an even number of beats from four up, 2 on any other beat, 1 between beats; times its length in half beats, rounded
 * up, at most 8.
 *
 * <p>Source for the embellishing tones: Open Music Theory (2014), page "embellishingTones", CC BY-SA 4.0. What may be
 * rested on, what is exposed and what it weighs: common practice, no source, and so advice.
 */
public record Fit(Melody melody, Progression progression, List<FitNote> notes) {
    /** So often at most the chords are gone round. */
    public static final int MOST_ROUNDS = 64;

    public Fit {
        notes = List.copyOf(notes);
    }

    public static Fit of(Melody melody, Progression progression) {
        return new Fitting(melody, progression).fit();
    }

    /** Beats in a bar of the tune over these chords. */
    public static Beats bar(Melody melody, Progression progression) {
        return progression.barred() && melody.bar().isPresent()
                ? melody.bar().get()
                : Beats.of(progression.beatsPerBar());
    }

    public List<FitNote> clashes() {
        return notes.stream().filter(FitNote::clashes).toList();
    }

    /** What all clashes together weigh. */
    public int friction() {
        return notes.stream().filter(FitNote::clashes).mapToInt(FitNote::weight).sum();
    }

    /** What all notes over a chord together weigh. */
    public int weight() {
        return notes.stream()
                .filter(note -> note.role() != NoteRole.FREE)
                .mapToInt(FitNote::weight)
                .sum();
    }

    /** The bar and the beat in it, from 1, the pick-up as bar 0; without bars the beat alone: {@code 2.1}, {@code 4+1/2}. */
    public Phrase place(FitNote note) {
        Beats pickup = melody.pickup();
        boolean early = note.start().compareTo(pickup) < 0;
        Beats bar = bar(melody, progression);
        Beats here = early ? note.start().plus(bar).minus(pickup) : note.start().minus(pickup);
        if (!progression.barred()) {
            return beat(here);
        }
        long number = early ? 0 : 1 + here.numerator() * bar.denominator() / (here.denominator() * bar.numerator());
        Beats within = early ? here : here.minus(bar.times(number - 1));
        return Phrase.of("{0}.{1}", (int) number, beat(within));
    }

    private static Phrase beat(Beats time) {
        long whole = time.numerator() / time.denominator();
        Beats rest = time.minus(Beats.of(whole));
        return Phrase.typed(whole + 1 + (rest.isZero() ? "" : "+" + rest));
    }

    /** Whether the tune is longer than the chords. */
    public boolean goesRound() {
        Beats chords = bar(melody, progression).times(progression.bars().size());
        return melody.beats().minus(melody.pickup()).compareTo(chords) > 0;
    }

    /** The tune with the nearest fitting note in place of each clash. */
    public Melody repaired() {
        List<Melody.MelodyNote> repaired = new java.util.ArrayList<>(melody.notes());
        for (FitNote clash : clashes()) {
            Melody.MelodyNote old = repaired.get(clash.note());
            clash.change()
                    .ifPresent(change ->
                            repaired.set(clash.note(), new Melody.MelodyNote(change.to(), old.start(), old.beats())));
        }
        return new Melody(repaired, melody.beats(), melody.bar(), melody.pickup());
    }
}
