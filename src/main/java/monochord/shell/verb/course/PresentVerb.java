package monochord.shell.verb.course;

import java.util.List;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.Key;
import monochord.view.Answer;

/** Takes a lesson with a room. */
final class PresentVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                "present",
                Usage.Topic.TEACHING,
                "present LESSON [in KEY]",
                "take a lesson with a room: one thing at a time, verdicts held back until Enter",
                "present 1.1",
                "present 2.1 in A");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = sentence.clause("in")
                .map(part -> part.read(LearnVerb::majorKey))
                .orElseGet(sitting::key);
        LibraryEntry entry =
                sentence.body().read(text -> LearnVerb.find(sitting.course().library(), text));
        return sitting.teaching().present(entry, key);
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return sitting.course().library().entries().stream()
                .map(LibraryEntry::number)
                .toList();
    }
}
