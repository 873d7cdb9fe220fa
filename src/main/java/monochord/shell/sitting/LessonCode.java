package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import monochord.file.Digest;
import monochord.lesson.LessonPart;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Source;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;
import monochord.view.Statement;

/** The Java of a lesson: shown, and run once the learner says so. Of somebody else's lesson none runs without a yes. */
final class LessonCode {
    private final Path file;
    private String waiting = "";

    /** @param file the lesson's */
    LessonCode(Path file) {
        this.file = file;
    }

    /** Whether the next Enter runs something. */
    boolean isWaiting() {
        return !waiting.isEmpty();
    }

    /** @return whether the walk stops here */
    boolean show(LessonPart.Code code, List<Answer> page, Sitting sitting) {
        String text = SafeText.clean(code.text()).stripTrailing();
        page.add(Saying.of(StyledText.of("  " + text.replace("\n", "\n  "), Style.JAVA)));
        if (sitting.outside().trust().isTrusted(file, digest())) {
            waiting = text;
        } else {
            page.add(Statement.of(
                    Phrase.sentence("This lesson is not one of ours. yes runs its Java, this and what follows.")));
            sitting.outside().askConsent(() -> consented(text, sitting), sitting.teaching()::goOn);
        }
        return true;
    }

    private String digest() {
        return new Source(new Faults(""), Source.MOST_BYTES)
                .bytes(file)
                .map(Digest::of)
                .orElse("");
    }

    /** In a sitting that is closed off a yes is written, and nobody's. */
    private Answer consented(String text, Sitting sitting) {
        if (sitting.outside().seal().isPresent()) {
            return Statement.failed(Phrase.sentence("A lesson's Java that is not ours is not run in a replay."));
        }
        Answer ran = sitting.cells().run(text);
        try {
            sitting.outside().trust().trust(digest(), file.toString());
            return ran;
        } catch (IOException failed) {
            return Answers.of(ran, Statement.of(Phrase.of("The yes could not be kept: {0}", Failure.told(failed))));
        }
    }

    /** Runs what was shown last, if it still waits. */
    void run(List<Answer> page, Sitting sitting) {
        if (isWaiting()) {
            String text = waiting;
            waiting = "";
            page.add(sitting.cells().run(text));
        }
    }

    void passBy() {
        waiting = "";
    }
}
