package monochord.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.lesson.read.SourceLine;

/** The lines that belong to one question of a file: its block, its words, and what was written around them. */
final class QuestionSlot {
    private final List<SourceLine> above = new ArrayList<>();
    private final List<SourceLine> below = new ArrayList<>();
    private SourceLine fence;
    private AssignedQuestion question;
    private List<SourceLine> written;

    void add(SourceLine line) {
        (fence == null ? above : below).add(line);
    }

    /** @param read nothing for a block that has a fault, or is something to draw from */
    void begin(SourceLine its, Optional<AssignedQuestion> read) {
        fence = its;
        question = read.orElse(null);
    }

    boolean isBegun() {
        return fence != null;
    }

    /** Number of the line on which its block begins. */
    int line() {
        return fence.number();
    }

    /** With its words. */
    Optional<AssignedQuestion> question() {
        if (question != null && written == null) {
            partWords();
        }
        return Optional.ofNullable(question);
    }

    /** What is neither block nor words: the answers. */
    List<SourceLine> written() {
        return written == null ? List.of() : written;
    }

    private void partWords() {
        int from = 0;
        while (from < below.size() && below.get(from).isBlank()) {
            from++;
        }
        int to = from;
        while (to < below.size() && !below.get(to).isBlank() && !WrittenAnswers.isLabelled(below.get(to))) {
            to++;
        }
        int end = to - from > 1 ? endOfWords(from, to) : to;
        question = new AssignedQuestion(
                question.item(),
                question.skill(),
                question.subject(),
                question.key(),
                question.seed(),
                joined(from, end));
        written = new ArrayList<>(above);
        written.addAll(below.subList(end, below.size()));
    }

    /** Several lines are words that an editor has wrapped, or words with an answer right below them. */
    private int endOfWords(int from, int to) {
        String asked = question.question()
                .map(one -> PlainWords.of(one.prompt().toString()))
                .orElse("");
        for (int end = from + 1; end <= to; end++) {
            if (PlainWords.of(joined(from, end)).equals(asked)) {
                return end;
            }
        }
        return to;
    }

    private String joined(int from, int to) {
        return below.subList(from, to).stream().map(line -> line.text().strip()).collect(Collectors.joining(" "));
    }
}
