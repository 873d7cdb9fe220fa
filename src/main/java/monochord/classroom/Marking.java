package monochord.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.classroom.MarkedAnswer.MarkedTry;
import monochord.classroom.MarkedHandIn.HandInSigns;
import monochord.course.JudgedAnswer;
import monochord.lesson.Fault;
import monochord.lesson.read.Faults;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;

/**
 * Marks what is handed in. Every answer is judged anew, as it would have been at the prompt; a verdict that stands in the
 * file counts for nothing. The same file marked beside the same assignments gives the same, so files may be marked apart.
 */
public final class Marking {
    private final HandIn handIn;
    private final String file;
    private final TeachersFiles teacher;
    private final Faults faults;
    private final Optional<Assignment> assigned;
    private final PupilCode code;
    private final boolean isWhole;
    private boolean altered;

    private Marking(HandIn handIn, PupilCode code, String file, TeachersFiles teacher) {
        this.handIn = handIn;
        this.file = file;
        this.teacher = teacher;
        this.faults = new Faults(file);
        this.code = code;
        this.isWhole = handIn.assignment().digest().equals(handIn.digest());
        Optional<Assignment> own = teacher.assignment(handIn.assignment().id());
        boolean drawsAgain = own.isEmpty() && isWhole && handIn.assignment().isEachTheirOwn();
        this.assigned = (drawsAgain ? Optional.of(handIn.assignment()) : own).map(one -> one.forPupil(code));
    }

    /** @param name as it is told and stands in the faults */
    public static MarkedHandIn mark(Path file, String name, TeachersFiles teacher) {
        return mark(AssignmentReader.read(file, name), name, teacher);
    }

    /** @param name of the file that was read, as it is told */
    public static MarkedHandIn mark(AssignmentReading reading, String name, TeachersFiles teacher) {
        Optional<HandIn> handIn = reading.handIn();
        if (handIn.isEmpty() || handIn.get().code().isEmpty()) {
            return unmarked(reading, name);
        }
        PupilCode code = handIn.get().code().get();
        return new Marking(handIn.get(), code, name, teacher).marked(reading.faults());
    }

    private static MarkedHandIn unmarked(AssignmentReading reading, String name) {
        Faults faults = new Faults(name);
        if (reading.faults().isEmpty()) {
            faults.at(
                    1,
                    1,
                    Phrase.of("no pupil's code stands in the head"),
                    Phrase.of("write for example {0}", Phrase.typed("code: 7b-04")));
        }
        return new MarkedHandIn(
                name,
                reading.assignment().map(Assignment::id).orElse(""),
                Optional.empty(),
                List.of(),
                HandInSigns.NONE,
                reading.handIn().flatMap(HandIn::given),
                together(reading.faults(), faults));
    }

    private static List<Fault> together(List<Fault> read, Faults found) {
        return Stream.concat(read.stream(), found.inOrder().stream())
                .sorted(Fault.IN_ORDER)
                .toList();
    }

    private MarkedHandIn marked(List<Fault> read) {
        Assignment stands = assigned.orElse(handIn.assignment());
        altered = assigned.map(one -> !one.digest().equals(handIn.digest())).orElse(false) || !isWhole;
        List<MarkedAnswer> answers = new ArrayList<>();
        for (AssignedQuestion question : stands.questions()) {
            answer(question).ifPresent(answers::add);
        }
        boolean late = stands.head()
                .due()
                .flatMap(due -> handIn.given().map(given -> given.isAfter(due)))
                .orElse(false);
        return new MarkedHandIn(
                file,
                stands.id(),
                Optional.of(code),
                answers,
                new HandInSigns(altered, late, teacher.isUnknown(code)),
                handIn.given(),
                together(read, faults));
    }

    /** Nothing where the question is not in the file, or cannot be told from what was made of it. */
    private Optional<MarkedAnswer> answer(AssignedQuestion asked) {
        Optional<AssignedQuestion> written = handIn.assignment().question(asked.item());
        Optional<Question> question = asked.question();
        if (written.isEmpty() || question.isEmpty()) {
            return Optional.empty();
        }
        boolean isOther = isOther(asked, written.get(), question.get());
        if (isOther && assigned.isEmpty()) {
            return Optional.empty();
        }
        GivenAnswer given = handIn.answer(asked.item()).orElse(new GivenAnswer(asked.item(), List.of(), 0, 0));
        tooMany(given);
        List<MarkedTry> tries = given.tries().stream()
                .map(typed -> judged(typed, question.get()))
                .toList();
        return Optional.of(new MarkedAnswer(
                handIn.assignment().id(),
                code,
                asked.item(),
                question.get(),
                tries,
                given.help(),
                given.seconds(),
                isOther));
    }

    /** Whether the file asks something else than was assigned. Words of another version are said to be such, and hold. */
    private boolean isOther(AssignedQuestion asked, AssignedQuestion written, Question question) {
        boolean isSame = asked.skill().equals(written.skill())
                && asked.subject().equals(written.subject())
                && asked.key().equals(written.key())
                && asked.seed() == written.seed()
                && PlainWords.of(asked.words()).equals(PlainWords.of(written.words()));
        if (isSame && asked.isAskedAs(question)) {
            return false;
        }
        if (isSame && !asked.subject().isEmpty() && (isWhole || assigned.isPresent())) {
            fault(asked, Phrase.of("question {0} has the words of another version", asked.item()));
            return false;
        }
        altered |= !isSame || !isWhole;
        fault(asked, Phrase.of("question {0} is not as it was assigned", asked.item()));
        return true;
    }

    private void fault(AssignedQuestion asked, Phrase what) {
        faults.at(
                handIn.places().getOrDefault(asked.item(), 1), 1, what, Phrase.of("look at it beside the assignment"));
    }

    private void tooMany(GivenAnswer given) {
        AssignmentTerms terms = assigned.orElse(handIn.assignment()).terms();
        int allowed = terms.tries();
        if (!terms.allow(given.tries().size())) {
            TypedAnswer extra = given.tries().get(allowed);
            faults.at(
                    extra.line(),
                    extra.column(),
                    Phrase.counted(
                            allowed,
                            "question {0} has {1} answers where {2} is allowed",
                            "question {0} has {1} answers where {2} are allowed",
                            given.item(),
                            given.tries().size(),
                            allowed),
                    Phrase.of("the last one counts"));
        }
    }

    private MarkedTry judged(TypedAnswer typed, Question question) {
        NoteNaming notes = handIn.notes();
        return new MarkedTry(
                typed.text(), JudgedAnswer.of(typed.text(), question, notes).verdict());
    }
}
