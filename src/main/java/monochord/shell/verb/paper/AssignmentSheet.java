package monochord.shell.verb.paper;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.classroom.AssignedQuestion;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentReader;
import monochord.classroom.AssignmentReading;
import monochord.classroom.PupilCode;
import monochord.paper.Worksheet;
import monochord.practice.Question;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** An assignment as a worksheet: {@code sheet homework.md as 7b-04 --pdf sheet.pdf}. */
final class AssignmentSheet {
    static final String AS = "as";
    private static final String EXAMPLE = "sheet homework.md as 7b-04 --pdf sheet.pdf";

    private AssignmentSheet() {}

    /** Whether a sentence names the file of an assignment. */
    static boolean isNamed(Sentence sentence) {
        return sentence.body().text().endsWith(".md");
    }

    static AssignmentReading read(Sentence sentence, Sitting sitting) {
        Path file = sentence.body().read(sitting.outside()::file);
        return AssignmentReader.read(file, sentence.body().text());
    }

    /** @throws Unreadable if its questions are drawn for each pupil and none is named, or one of them is heard */
    static Worksheet of(Assignment assignment, Sentence sentence) {
        Optional<PupilCode> code = sentence.clause(AS).map(part -> part.read(PupilCode::parse));
        if (code.isEmpty() && assignment.questions().isEmpty()) {
            throw refused(sentence, Clause.of("each pupil has questions of their own; name the code of one"));
        }
        List<Question> questions = new ArrayList<>();
        for (AssignedQuestion asked :
                code.map(assignment::forPupil).orElse(assignment).questions()) {
            asked.question().ifPresent(questions::add);
        }
        if (questions.stream().anyMatch(Question::isByEar)) {
            throw refused(sentence, Clause.of("it is asked by ear, and paper has no sound"));
        }
        Phrase title = Phrase.typed(assignment.head().title());
        return Worksheet.of(
                code.map(its -> Phrase.of("{0}, {1}", title, Phrase.typed(its.text())))
                        .orElse(Phrase.of("{0}", title)),
                questions);
    }

    private static Unreadable refused(Sentence sentence, Clause why) {
        return Unreadable.because(sentence.body().text(), 0, "something to print", why, EXAMPLE);
    }
}
