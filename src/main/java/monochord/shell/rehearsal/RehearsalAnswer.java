package monochord.shell.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.course.rehearsal.RehearsalGoal;
import monochord.course.rehearsal.Round;
import monochord.score.Hand;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What is going to be rehearsed, and how.
 *
 * @param round the first
 * @param keyboard that is listened to; empty for none, and then the player says how it went
 * @param plays whether it begins by itself
 * @param care a caution, or nothing
 */
public record RehearsalAnswer(
        RehearsalMusic music, RehearsalGoal goal, Round round, int minutes, String keyboard, boolean plays, Phrase care)
        implements Answer {
    private static final Phrase HANDS_AND_EARS = Phrase.sentence(
            "Begin with the volume low and the shoulders loose; if anything hurts or rings, stop for today.");

    /** The line of care for hands and ears at the first rehearsal of a sitting. */
    public static Phrase care(boolean isFirst) {
        return isFirst ? HANDS_AND_EARS : Phrase.NOTHING;
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(head());
        text.line(parts());
        text.line(how());
        if (!care.isEmpty()) {
            text.line(care, Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    private Phrase head() {
        return Phrase.sentence(
                "{0} in {1}, from {2} towards {3}, for {4}.",
                music.title(),
                round.key(),
                round.tempo(),
                goal.tempo(),
                Phrase.counted(minutes, "one minute", "{0} minutes", minutes));
    }

    private Phrase parts() {
        Phrase yours = switch (music.yours()) {
            case HANDS -> Phrase.of("You play chords and bass");
            case CHORDS -> Phrase.of("You play the chords");
            case BASS -> Phrase.of("You play the bass");
            case TUNE -> Phrase.of("You play the tune");
        };
        List<Phrase> mine = new ArrayList<>();
        if (music.played().contains(Hand.LEFT)) {
            mine.add(Phrase.of("the bass"));
        }
        if (music.played().contains(Hand.RIGHT)) {
            mine.add(Phrase.of("the chords"));
        }
        if (music.played().contains(Hand.TUNE)) {
            mine.add(Phrase.of("the tune"));
        }
        return mine.isEmpty()
                ? Phrase.sentence("{0}; I only count.", yours)
                : Phrase.sentence("{0}, I play {1}.", yours, Phrase.list(mine));
    }

    private Phrase how() {
        if (!keyboard.isEmpty()) {
            return Phrase.sentence("I listen to {0}; any key here stops.", Phrase.typed(keyboard));
        }
        Phrase say = ask();
        return plays ? Phrase.sentence("Any key stops.").then(say) : say;
    }

    /** How the player says how it went. */
    public static Phrase ask() {
        return Phrase.sentence(
                "How did it go? Enter says clean, a bar's number says it stumbled there, {0} that most went astray.",
                Phrase.verb("0"));
    }

    @Override
    public Optional<Answer> noted() {
        return Optional.of(new RehearsalAnswer(music, goal, round, minutes, "", false, care));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "rehearse")
                .put("title", music.title().toString())
                .put("key", round.key().toString())
                .put("tempo", round.tempo())
                .put("goal", goal.tempo())
                .put("bars", goal.bars())
                .put("minutes", minutes)
                .put("yours", music.yours().name().toLowerCase(Locale.ROOT));
    }
}
