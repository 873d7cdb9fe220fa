package monochord.shell.rehearsal;

import java.util.ArrayList;
import java.util.List;
import monochord.course.rehearsal.DueChange;
import monochord.course.rehearsal.Round;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.score.BarGrid;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.view.Look;

/**
 * What is to be seen of a round: this bar and the next, the beat that is counted, and the chord that comes.
 *
 * @param firstBar the number of the place's first bar
 */
public record RoundStrip(Round round, Progression chords, List<DueChange> due, BarGrid metre, int firstBar) {
    /**
     * A moment of it; two that look alike are equal.
     *
     * @param bar from 0, below 0 while it is counted in
     * @param beat counted, from 0
     */
    public record RoundMoment(int bar, int beat) {}

    public static RoundStrip of(RehearsalMusic music, Round round, int firstBar) {
        Progression chords = music.chords(round);
        List<DueChange> due = DueChange.chords(chords, music.metre().bar(), DueChange.PlayersPart.HANDS);
        return new RoundStrip(round, chords, due, music.metre(), firstBar);
    }

    /** @param quarters from the first full bar, below 0 while it is counted in */
    public RoundMoment at(double quarters) {
        double bar = quarters(metre.bar());
        int number = (int) Math.floor(quarters / bar);
        double within = quarters - number * bar;
        return new RoundMoment(number, (int) Math.floor(within / quarters(metre.counted())));
    }

    private static double quarters(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }

    /** Always three lines. */
    public StyledText picture(RoundMoment moment, Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        Phrase place = moment.bar() < 0
                ? Phrase.of("counting in")
                : Phrase.of("bar {0} of {1}", firstBar + round.first() + moment.bar(), firstBar + round.last());
        text.line(Phrase.joined("   ", List.of(count(moment), place, Phrase.of("at {0}", round.tempo()))), Style.QUIET);
        Phrase now = moment.bar() < 0 ? Phrase.of("–") : bar(moment.bar());
        text.line(Phrase.joined("  |  ", List.of(now.styled(Style.STRONG), bar(moment.bar() + 1))));
        text.line(coming(moment));
        return text.build();
    }

    /** {@code 1 [2] 3 4}. */
    private Phrase count(RoundMoment moment) {
        int beats = (int) Math.ceil(quarters(metre.bar()) / quarters(metre.counted()));
        List<Phrase> all = new ArrayList<>();
        for (int beat = 0; beat < beats; beat++) {
            all.add(beat == moment.beat() ? Phrase.of("[{0}]", beat + 1) : Phrase.of("{0}", beat + 1));
        }
        return Phrase.row(all);
    }

    private Phrase bar(int number) {
        if (number >= chords.bars().size()) {
            return Phrase.of("end");
        }
        Bar bar = chords.bars().get(number);
        List<Phrase> written = new ArrayList<>();
        for (ChordEvent slot : bar.slots()) {
            written.add(slot.held() ? Phrase.of(".") : name(slot.chord()));
            for (int share = 1; share < slot.shares(); share++) {
                written.add(Phrase.of("."));
            }
        }
        return Phrase.row(written);
    }

    private static Phrase name(Chord chord) {
        return Phrase.of("{0}", chord);
    }

    /** The chord that comes, and how many beats it is away. */
    private Phrase coming(RoundMoment moment) {
        double now = moment.bar() * quarters(metre.bar()) + moment.beat() * quarters(metre.counted());
        for (DueChange change : due) {
            double away = (quarters(change.at()) - now) / quarters(metre.counted());
            if (away > 0) {
                int beats = (int) Math.ceil(away);
                Phrase name = change.name().styled(Style.STRONG);
                return beats == 1 ? Phrase.of("{0} in one beat", name) : Phrase.of("{0} in {1} beats", name, beats);
            }
        }
        return Phrase.of("last chord");
    }
}
