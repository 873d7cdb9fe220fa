package monochord.classroom;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import monochord.file.Digest;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.theory.note.NoteName;

/**
 * Practice to be done at home.
 *
 * @param words of the teacher, perhaps nothing
 * @param draws from what each pupil's own questions are drawn; none where all get the same
 * @param questions in the order of their numbers; none where each pupil's own are not drawn yet
 */
public record Assignment(
        AssignmentHead head, AssignmentTerms terms, String words, List<Ask> draws, List<AssignedQuestion> questions) {
    /** What {@code same} stands for in an assignment, which has no key of its own. */
    private static final Key KEY = Key.major(NoteName.parse("C"));

    public Assignment {
        draws = List.copyOf(draws);
        questions = questions.stream()
                .sorted(Comparator.comparingInt(AssignedQuestion::item))
                .toList();
    }

    /** The same questions for all. */
    public static Assignment same(AssignmentHead head, AssignmentTerms terms, String words, List<Question> questions) {
        return new Assignment(head, terms, words, List.of(), numbered(questions));
    }

    /** For each pupil questions of their own, drawn from these. */
    public static Assignment each(AssignmentHead head, AssignmentTerms terms, String words, List<Ask> draws) {
        return new Assignment(head, terms, words, draws, List.of());
    }

    private static List<AssignedQuestion> numbered(List<Question> questions) {
        List<AssignedQuestion> numbered = new ArrayList<>();
        questions.forEach(question -> numbered.add(AssignedQuestion.of(numbered.size() + 1, question)));
        return numbered;
    }

    public String id() {
        return head.id();
    }

    public boolean isEachTheirOwn() {
        return !draws.isEmpty();
    }

    /**
     * The assignment as that pupil gets it. Where each has questions of their own, they are drawn from the assignment's id
     * and the code, so that anybody draws the same again and no list is kept.
     */
    public Assignment forPupil(PupilCode code) {
        if (!isEachTheirOwn()) {
            return this;
        }
        List<Question> drawn = new ArrayList<>();
        for (int i = 0; i < draws.size(); i++) {
            drawn.addAll(draws.get(i).questions(KEY, seed(code, i)));
        }
        return new Assignment(head, terms, words, draws, numbered(drawn));
    }

    private long seed(PupilCode code, int draw) {
        String digest = Digest.of(head.id() + "\n" + head.seed() + "\n" + code + "\n" + draw);
        return ByteBuffer.wrap(HexFormat.of().parseHex(digest.substring(0, 16))).getLong();
    }

    /** The questions of these blocks, drawn with this seed for all alike. */
    public static List<Question> drawn(List<Ask> asks, long seed) {
        List<Question> drawn = new ArrayList<>();
        for (int i = 0; i < asks.size(); i++) {
            drawn.addAll(asks.get(i).questions(KEY, seed + i));
        }
        return drawn;
    }

    public Optional<AssignedQuestion> question(int item) {
        return questions.stream().filter(question -> question.item() == item).findFirst();
    }

    /**
     * The fingerprint of what is asked and how: SHA-256 in 64 hexadecimal digits. Title, words of the teacher, and what an
     * editor does to quotation marks and spaces are no part of it; where each has questions of their own, neither are those.
     */
    public String digest() {
        StringBuilder text = new StringBuilder();
        line(text, head.id(), head.due().map(Object::toString).orElse(""), head.seed());
        line(text, terms.tries(), terms.hints(), terms.atOnce());
        draws.forEach(ask ->
                line(text, ask.skill().id(), ask.subject() == null ? "" : ask.subject(), ask.keys(), ask.count()));
        if (draws.isEmpty()) {
            questions.forEach(one -> line(
                    text, one.item(), one.skill(), one.subject(), one.key(), one.seed(), PlainWords.of(one.words())));
        }
        return Digest.of(text.toString());
    }

    private static void line(StringBuilder text, Object... parts) {
        for (Object part : parts) {
            text.append(part).append('\t');
        }
        text.append('\n');
    }
}
