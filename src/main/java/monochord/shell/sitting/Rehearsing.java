package monochord.shell.sitting;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import monochord.course.RehearsalUnderWay;
import monochord.course.rehearsal.HeardRound;
import monochord.course.rehearsal.KeyPress;
import monochord.course.rehearsal.RehearsalGoal;
import monochord.course.rehearsal.RehearsalState;
import monochord.course.rehearsal.Round;
import monochord.course.rehearsal.RoundResult;
import monochord.shell.line.LineMode;
import monochord.shell.rehearsal.RehearsalAnswer;
import monochord.shell.rehearsal.RehearsalMusic;
import monochord.shell.rehearsal.RoundPlayer;
import monochord.shell.rehearsal.RoundStrip;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/**
 * The rehearsal of a sitting: plays its rounds where there is a prompt, has the keyboard or the player say how they went, and
 * goes where {@link RehearsalState} leads. Through a pipe nothing is played, and each round is asked about at once.
 */
public final class Rehearsing {
    private static final double MILLIS_PER_MINUTE = 60_000;

    private final Sitting sitting;
    private RoundPlayer player;
    private RehearsalMusic music;
    private int minutes;
    private boolean isCautioned;
    private boolean isSilenceSaid;

    Rehearsing(Sitting sitting) {
        this.sitting = sitting;
    }

    private RoundPlayer player() {
        if (player == null) {
            player = new RoundPlayer(sitting.stage().ear(), sitting.stage().keys());
        }
        return player;
    }

    /** Whether the line goes on with a rehearsal. */
    public boolean isOpen() {
        return now().isPresent();
    }

    /** Whether a round is being played. */
    public boolean isRunning() {
        return player != null && player.isRunning();
    }

    /** Breaks off what is being played; Enter goes on. */
    public void stop() {
        if (isRunning()) {
            player.stop();
            sitting.stage().board().clear();
        }
    }

    private boolean hasPrompt() {
        return sitting.stage().board().isThere();
    }

    /** Begins a rehearsal, in place of another. */
    public Answer begin(RehearsalMusic wanted, RehearsalGoal goal, int forMinutes) {
        stop();
        music = wanted;
        minutes = forMinutes;
        long until = sitting.study().now() + Duration.ofMinutes(forMinutes).toMillis();
        RehearsalUnderWay begun = new RehearsalUnderWay(RehearsalState.begin(goal), until);
        sitting.teaching().begin(begun);
        Round first = begun.state().round();
        String keyboard = hasPrompt() ? sitting.stage().keys().keyboard().orElse("") : "";
        Phrase care = RehearsalAnswer.care(!isCautioned);
        isCautioned = true;
        sitting.linePlace().isSaidThere();
        play(begun);
        return new RehearsalAnswer(wanted, goal, first, forMinutes, keyboard, hasPrompt(), care);
    }

    private Optional<RehearsalUnderWay> now() {
        return sitting.teaching().rehearsal();
    }

    /** Plays the next round, or asks about it where nothing is played. */
    private void play(RehearsalUnderWay current) {
        if (!hasPrompt()) {
            current.asks(true);
            return;
        }
        Round round = current.state().round();
        RoundStrip strip = RoundStrip.of(music, round, current.state().goal().firstBar());
        player().play(music.performance(round), new RoundOnScreen(current, round, strip));
    }

    /** Shows a round in the strip; on the thread of the round. */
    private final class RoundOnScreen implements RoundPlayer.Listener {
        private final RehearsalUnderWay current;
        private final Round round;
        private final RoundStrip strip;
        private RoundStrip.RoundMoment shown;
        private boolean isSilent;

        RoundOnScreen(RehearsalUnderWay current, Round round, RoundStrip strip) {
            this.current = current;
            this.round = round;
            this.strip = strip;
        }

        @Override
        public void isSilent() {
            isSilent = true;
        }

        @Override
        public void comesTo(double beats) {
            RoundStrip.RoundMoment moment = strip.at(beats);
            if (moment.equals(shown)) {
                return;
            }
            shown = moment;
            if (isSilent && moment.bar() >= 0) {
                sayWhyNothingSounds();
            }
            sitting.stage().board().show(look -> strip.picture(moment, look));
        }

        @Override
        public void isOver(List<KeyPress> presses) {
            over(current, round, presses);
        }
    }

    private void sayWhyNothingSounds() {
        if (!isSilenceSaid) {
            isSilenceSaid = true;
            Phrase why = sitting.stage()
                    .ear()
                    .silence()
                    .map(reason -> Phrase.sentence("No sound: {0}.", reason))
                    .orElse(Phrase.NOTHING);
            say(why.then(Phrase.sentence("The count is on the screen.")));
        }
    }

    private void say(Phrase words) {
        sitting.stage().board().say(Statement.of(words.styled(Style.QUIET)));
    }

    /** On the thread of the round. */
    private void over(RehearsalUnderWay current, Round round, List<KeyPress> presses) {
        if (sitting.stage().keys().keyboard().isEmpty()) {
            current.asks(true);
            sitting.stage()
                    .board()
                    .show(look -> Statement.of(RehearsalAnswer.ask()).text(look));
            return;
        }
        double quarter = MILLIS_PER_MINUTE / music.performance(round).tempo();
        HeardRound heard = HeardRound.of(music.due(round), presses, quarter, round.key());
        int firstBar = current.state().goal().firstBar() + round.first();
        say(goOn(current, RoundResult.heard(heard, firstBar)));
    }

    /** Goes where the result leads, and says it. */
    private Phrase goOn(RehearsalUnderWay current, RoundResult result) {
        RehearsalState next = current.state().after(result);
        boolean late = current.isTimeUp(sitting.study().now());
        RehearsalState reached = late && !next.isOver() ? next.end(timeIsUp()) : next;
        current.comesTo(reached);
        if (!reached.isOver()) {
            play(current);
            return reached.lead();
        }
        sitting.teaching().leave(current);
        sitting.stage().board().clear();
        return reached.lead().then(reached.tomorrow());
    }

    private Phrase timeIsUp() {
        return Phrase.counted(minutes, "The minute is over.", "The {0} minutes are over.", minutes);
    }

    /**
     * The player says in which bar the round stumbled, by its number, or 0 where most went astray.
     *
     * @throws Unreadable if the round has no such bar
     */
    public Answer stumbled(String number) {
        int bars = round().bars();
        int bar = Integer.parseInt(number) - firstBar();
        if (Integer.parseInt(number) == 0) {
            return went(RoundResult.wild(bars));
        } else if (bar >= 0 && bar < bars) {
            return went(RoundResult.stumbled(bar));
        }
        throw Unreadable.because(
                number,
                0,
                "a bar of this round",
                Clause.of("it has bars {0} to {1}", firstBar(), firstBar() + bars - 1),
                Integer.toString(firstBar()));
    }

    /** The player says how the last round went, or the one that was broken off. */
    public Answer went(RoundResult result) {
        sitting.stage().board().clear();
        return Statement.of(goOn(now().orElseThrow(), result));
    }

    private Round round() {
        return now().orElseThrow().state().round();
    }

    /** The number of the first bar of the round that is asked about. */
    private int firstBar() {
        return now().orElseThrow().state().goal().firstBar() + round().first();
    }

    /** Whether that digit says how the round went, and no other number begins with it. */
    public boolean takesOneKey(int digit) {
        boolean isAsked = !sitting.cells().isOpen()
                && List.of(LineMode.ROUND_PLAYED, LineMode.REHEARSAL).contains(sitting.mode());
        return isAsked && (digit == 0 || firstBar() + round().bars() - 1 < 10);
    }

    /** Plays the round that was broken off, or the last, once more. */
    public Answer again() {
        RehearsalUnderWay current = now().orElseThrow();
        sitting.stage().board().clear();
        current.asks(false);
        play(current);
        Round round = current.state().round();
        return Statement.of(Phrase.sentence("Once more, at {0}.", round.tempo()));
    }

    /** The player has had enough. */
    public Answer end() {
        RehearsalUnderWay current = now().orElseThrow();
        stop();
        sitting.stage().board().clear();
        sitting.teaching().leave(current);
        return Statement.of(current.state().end(Phrase.NOTHING).tomorrow());
    }

    /** What to do now, for whoever asks. */
    public Answer help() {
        return new NotebookRemark(Statement.of(RehearsalAnswer.ask()));
    }
}
