package monochord.view.classroom;

import java.util.List;
import monochord.classroom.AssignedQuestion;
import monochord.classroom.Assignment;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.course.AskAnswer;

/** An assignment that was written to a file. */
public record AssignAnswer(String file, Assignment assignment) implements Answer {
    @Override
    public StyledText text(Look look) {
        int count = assignment.isEachTheirOwn()
                ? assignment.draws().stream().mapToInt(Ask::count).sum()
                : assignment.questions().size();
        Phrase questions = Phrase.counted(count, "{0} question", "{0} questions", count);
        Phrase name = Phrase.typed(file);
        Phrase made = assignment.isEachTheirOwn()
                ? Phrase.sentence("{0}: {1}, others for each pupil, written to {2}.", title(), questions, name)
                : Phrase.sentence("{0}: {1}, written to {2}.", title(), questions, name);
        return StyledText.builder(look.reader())
                .line(made)
                .line(isByEar() ? heard() : printed())
                .build()
                .wrapped(look.width());
    }

    private boolean isByEar() {
        return assignment.questions().stream()
                .flatMap(asked -> asked.question().stream())
                .anyMatch(Question::isByEar);
    }

    private Phrase printed() {
        Phrase sheet = assignment.isEachTheirOwn()
                ? Phrase.verb("sheet " + file + " as CODE --pdf sheet.pdf")
                : Phrase.verb("sheet " + file + " --pdf sheet.pdf");
        return Phrase.sentence(
                "A pupil takes it with {0}, or writes under its questions; {1} prints it.", taken(), sheet);
    }

    private Phrase heard() {
        return Phrase.sentence(
                "A pupil takes it with {0}. Some of it is asked by ear, which paper cannot do.", taken());
    }

    private Phrase taken() {
        return Phrase.verb("learn " + file + " as CODE");
    }

    private Phrase title() {
        return Phrase.typed(assignment.head().title());
    }

    @Override
    public void json(Json json) {
        List<Question> questions = assignment.questions().stream()
                .map(AssignedQuestion::question)
                .map(question -> question.orElseThrow())
                .toList();
        json.put("kind", "assign")
                .put("file", file)
                .put("id", assignment.id())
                .put("seed", assignment.head().seed())
                .put("digest", assignment.digest())
                .put("each", assignment.isEachTheirOwn())
                .objects(
                        "questions",
                        questions,
                        (object, question) ->
                                AskAnswer.fields(question, question.isByEar() ? null : question.subject(), object));
    }
}
