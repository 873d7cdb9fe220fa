package monochord.shell.verb.classroom;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.or;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;

import java.io.IOException;
import java.util.List;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentWriter;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.classroom.AssignAnswer;

/** Makes practice to be sent home: one file, for all alike or for each pupil apart. */
final class AssignVerb implements Verb {
    static final String OUT = "out";

    @Override
    public String word() {
        return "assign";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.TEACHING, Phrase.of("make practice to be sent home, as one file"))
                .form(
                        takes(Value.SKILL),
                        or(),
                        takes(Value.LESSON),
                        or(),
                        fixed(AssignSentence.SONG),
                        takes(Value.PLACE),
                        may(clause("in", Value.KEYS)),
                        may(clause(AssignSentence.COUNT, Value.NUMBER)),
                        may(clause(AssignSentence.CALLED, Value.TEXT)),
                        may(clause(AssignSentence.FOR, Value.NAME)),
                        may(clause(AssignSentence.DUE, Value.DAY)),
                        may(clause(AssignSentence.TRIES, Value.NUMBER)),
                        may(alone(AssignSentence.EACH)),
                        may(alone(AssignSentence.UNAIDED)),
                        may(alone(AssignSentence.LATER)),
                        may(clause(AssignSentence.SAYING, Value.TEXT)))
                .form(option(OUT, Value.OUT), may(option(NewFile.OVER)))
                .form(unsaid(option("seed", Value.SEED)))
                .examples(
                        AssignSentence.EXAMPLE,
                        "assign borrowed-chord, degree-chord in easy count 12 each --out each.md",
                        "assign 5.2 for 7b due 2026-12-10 tries 1 unaided later --out test.md",
                        "assign song my-song.md chorus --out chorus.md");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.has(OUT)) {
            throw Unreadable.because(
                    sentence.whole(),
                    sentence.whole().length(),
                    "an assignment",
                    "it has to be said where it goes",
                    AssignSentence.EXAMPLE);
        }
        try {
            return written(new AssignSentence(sentence, sitting).assignment(), sentence, sitting);
        } catch (IOException unreadable) {
            return Statement.failed(sitting.outside().told(unreadable));
        }
    }

    private static Answer written(Assignment assignment, Sentence sentence, Sitting sitting) {
        List<NewFile> files = NewFile.text(sentence, OUT, sitting, () -> AssignmentWriter.text(assignment)).stream()
                .toList();
        return NewFile.write(
                files, sentence, sitting, new AssignAnswer(files.get(0).name(), assignment));
    }
}
