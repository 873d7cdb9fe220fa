package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import monochord.lesson.read.LibraryEntry;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.LessonStart;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;

/** Takes a lesson with a room. */
final class PresentVerb implements Verb {
    @Override
    public String word() {
        return "present";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of("take a lesson with a room: one thing at a time, verdicts held back until Enter"))
                .form(takes(Value.LESSON), may(clause("in", Value.KEY)))
                .examples("present 1.1", "present 2.1 in A");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = sentence.clause("in")
                .map(part -> part.read(LearnVerb::majorKey))
                .orElseGet(sitting::key);
        LibraryEntry entry =
                sentence.body().read(text -> LearnVerb.find(sitting.course().library(), text));
        return LessonStart.withClass(entry, key, sitting);
    }
}
