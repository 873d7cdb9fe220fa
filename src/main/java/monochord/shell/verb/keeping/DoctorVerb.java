package monochord.shell.verb.keeping;

import java.util.List;
import java.util.stream.Stream;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;

/** Says what is there of all that the program can use, and mends what it can. */
final class DoctorVerb implements Verb {
    @Override
    public String word() {
        return "doctor";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                word(),
                Usage.VerbTopic.KEEPING,
                Phrase.of("say what is there and what is missing, and mend what can be mended"));
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        List<Finding> findings = Stream.of(
                        ProgramFindings.all(), SurroundingFindings.all(sitting), OwnThingsFindings.all(sitting))
                .flatMap(List::stream)
                .toList();
        return new DoctorAnswer(findings);
    }
}
