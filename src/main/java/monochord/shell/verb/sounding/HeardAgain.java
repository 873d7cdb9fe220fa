package monochord.shell.verb.sounding;

import java.util.Optional;
import monochord.practice.Excerpt;
import monochord.practice.Question;
import monochord.shell.playback.Hearing;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** What a question lets be heard, once more, from the loudspeaker or into a file. */
public final class HeardAgain {
    private HeardAgain() {}

    /** The open question's. */
    public static Answer of(Sentence sentence, Sitting sitting) {
        return of(Optional.of(sitting.question().question()), sentence, sitting);
    }

    /** @throws Unreadable if there is nothing to hear */
    public static Answer of(Optional<Question> open, Sentence sentence, Sitting sitting) {
        return Recording.isWanted(sentence) || open.isEmpty()
                ? recorded(open.flatMap(Question::heard), sentence, sitting)
                : Hearing.put(open.get(), sitting.stage().ear());
    }

    /** @throws Unreadable if there is nothing to hear */
    public static Answer recorded(Optional<Excerpt> heard, Sentence sentence, Sitting sitting) {
        Excerpt excerpt = heard.orElseThrow(() -> Unreadable.because(
                sentence.whole(),
                0,
                "something to hear",
                "that question has no sound",
                "hear interval --wav listen.wav"));
        return Recording.write(sentence, Hearing.of(excerpt), sitting);
    }
}
