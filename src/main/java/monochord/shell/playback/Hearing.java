package monochord.shell.playback;

import java.util.List;
import java.util.Optional;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Question;
import monochord.score.Hand;
import monochord.score.Score;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;
import monochord.view.course.AskAnswer;

/** Makes heard what a question for the ear is about. Nothing of it is named, drawn or remembered where it could be read. */
public final class Hearing {
    /** From so many keys on, the lowest is the left hand's. */
    private static final int TWO_HANDS = 4;

    private Hearing() {}

    /** How it is played: without labels and without a key, for both would tell. */
    public static Performance of(Excerpt excerpt) {
        return Performance.of(
                new Score.InTurn(excerpt.moments().stream().map(Hearing::struck).toList()));
    }

    private static Score struck(Moment moment) {
        List<Pitch> keys = moment.pitches();
        if (keys.isEmpty()) {
            return Score.rest(moment.beats());
        }
        int left = keys.size() < TWO_HANDS ? 0 : 1;
        Score right =
                Score.together(keys.subList(left, keys.size()), moment.beats()).by(Hand.RIGHT);
        return left == 0
                ? right
                : Score.together(keys.subList(0, left), moment.beats())
                        .by(Hand.LEFT)
                        .with(right);
    }

    /** Puts the question into words, and plays what is to be heard. */
    public static AskAnswer put(Question question, Ear ear) {
        return new AskAnswer(
                question, question.heard().map(excerpt -> play(excerpt, ear)).orElse(Phrase.NOTHING));
    }

    /**
     * Plays what the answer would have sounded like, and then what sounded.
     *
     * @return what can be done now
     */
    public static Phrase beside(Question question, String answer, Ear ear) {
        Optional<Excerpt> both = question.heardBeside(answer).or(question::heard);
        Phrase remark = both.map(excerpt -> play(excerpt, ear)).orElse(Phrase.NOTHING);
        return ear.silence().isPresent()
                ? remark
                : Phrase.sentence("Listen: first yours, then what it was. hear plays the latter again.");
    }

    /**
     * Plays the question once more.
     *
     * @return why nothing sounds, if nothing does
     */
    public static Phrase again(Optional<Excerpt> asked, Ear ear) {
        Phrase remark = asked.map(excerpt -> play(excerpt, ear)).orElse(Phrase.NOTHING);
        return ear.silence().isPresent() ? remark : Phrase.NOTHING;
    }

    private static Phrase play(Excerpt excerpt, Ear ear) {
        Phrase remark = ear.playUnseen(of(excerpt));
        return ear.silence()
                .map(reason ->
                        Phrase.sentence("No sound: {0}. hear {1} writes a file.", reason, Phrase.typed("--wav FILE")))
                .orElse(remark);
    }
}
