package monochord.classroom;

import java.util.Optional;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.lesson.LessonPart.Ask;
import monochord.text.SafeText;
import monochord.theory.note.NoteNaming;

/**
 * Writes assignments, and what pupils hand in, as {@link AssignmentReader} reads them. Nothing stands in them of who or
 * where: no name, no path, no machine.
 */
public final class AssignmentWriter {
    private final StringBuilder text = new StringBuilder();

    private AssignmentWriter() {}

    /** An assignment to be given out, with room for the answers. */
    public static String text(Assignment assignment) {
        AssignmentWriter writer = new AssignmentWriter();
        writer.head(assignment, assignment.digest());
        writer.field("code", "");
        writer.body(assignment, Optional.empty());
        return writer.text.toString();
    }

    /** What is handed in. */
    public static String text(HandIn handIn) {
        AssignmentWriter writer = new AssignmentWriter();
        writer.head(handIn.assignment(), handIn.digest());
        writer.field("code", handIn.code().map(PupilCode::text).orElse(""));
        handIn.given().ifPresent(day -> writer.field("given", day));
        if (handIn.notes() != NoteNaming.ENGLISH) {
            writer.field("notes", handIn.notes());
        }
        writer.body(handIn.assignment(), Optional.of(handIn));
        return writer.text.toString();
    }

    private void head(Assignment assignment, String digest) {
        AssignmentHead head = assignment.head();
        AssignmentTerms terms = assignment.terms();
        line("---");
        field(AssignmentHeadText.ASSIGNMENT, head.id());
        field("title", head.title());
        if (!head.forWhom().isEmpty()) {
            field("for", head.forWhom());
        }
        head.due().ifPresent(day -> field("due", day));
        field("seed", head.seed());
        field("tries", terms.tries() == AssignmentTerms.ANY ? "any" : terms.tries());
        field("hints", terms.hints() ? "yes" : "no");
        field("verdicts", terms.atOnce() ? AssignmentHeadText.NOW : AssignmentHeadText.LATER);
        field("digest", digest);
    }

    private void body(Assignment assignment, Optional<HandIn> handIn) {
        line("---");
        if (!assignment.words().isEmpty()) {
            line("").line(SafeText.clean(assignment.words()));
        }
        assignment.draws().forEach(this::draw);
        for (AssignedQuestion question : assignment.questions()) {
            question(question);
            line("");
            handIn.flatMap(given -> given.answer(question.item())).ifPresentOrElse(this::answer, () -> line("Answer:"));
        }
    }

    private void draw(Ask ask) {
        line("").line("```ask").field("skill", ask.skill().id());
        if (ask.subject() != null) {
            field("subject", ask.subject());
        }
        field("keys", ask.keys()).field("count", ask.count()).line("```");
    }

    private void question(AssignedQuestion question) {
        line("").line("## " + question.item()).line("").line("```ask");
        field(QuestionText.ITEM, question.item()).field("skill", question.skill());
        if (!question.subject().isEmpty()) {
            field("subject", question.subject());
        }
        field("key", question.key()).field("seed", question.seed()).line("```");
        line("").line(SafeText.oneLine(question.words()));
    }

    private void answer(GivenAnswer given) {
        given.tries().forEach(typed -> field("Answer", typed.text()));
        if (given.help() > 0) {
            field("Help", given.help());
        }
        if (given.seconds() > 0) {
            field("Took", given.seconds());
        }
    }

    private AssignmentWriter field(String name, Object value) {
        return line((name + ": " + SafeText.oneLine(value.toString())).stripTrailing());
    }

    private AssignmentWriter line(String line) {
        text.append(line).append('\n');
        return this;
    }
}
