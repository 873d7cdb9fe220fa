package monochord.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import monochord.classroom.MarkedAnswer;
import monochord.classroom.MarkedAnswer.MarkedTry;
import monochord.classroom.MarkedHandIn;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.theory.Key;

/** A page for one pupil: what was right, which mistake was made, the way to the answer, what to practise. */
public final class Feedback {
    private Feedback() {}

    /** @throws IllegalArgumentException if the file names no pupil */
    public static Handout of(MarkedHandIn marked) {
        String code = marked.code()
                .orElseThrow(() -> new IllegalArgumentException(marked.file() + " names no pupil"))
                .text();
        List<Handout.HandoutSection> sections = new ArrayList<>();
        section(
                sections,
                Phrase.of("To look at again"),
                marked.answers().stream()
                        .filter(one -> !one.isRight())
                        .map(Feedback::again)
                        .toList());
        section(
                sections,
                Phrase.of("Right"),
                marked.answers().stream()
                        .filter(MarkedAnswer::isRight)
                        .map(Feedback::right)
                        .toList());
        section(sections, Phrase.of("To practise"), practice(marked));
        return new Handout(
                Phrase.of("{0}: {1}", Phrase.typed(code), Phrase.typed(marked.assignment())),
                opening(marked),
                sections,
                Phrase.of("Times and tries are as told by the file."));
    }

    private static void section(List<Handout.HandoutSection> sections, Phrase heading, List<Handout.Block> blocks) {
        if (!blocks.isEmpty()) {
            sections.add(new Handout.HandoutSection(heading, 1, blocks));
        }
    }

    private static List<Phrase> opening(MarkedHandIn marked) {
        List<Phrase> opening =
                new ArrayList<>(List.of(Phrase.sentence("{0} of {1} right.", marked.right(), marked.of())));
        if (marked.signs().late()) {
            opening.add(Phrase.sentence("It came after the last day."));
        }
        if (marked.signs().altered()) {
            opening.add(Phrase.sentence("The file is not as it was given out; ask about that."));
        }
        return opening;
    }

    private static Phrase numbered(MarkedAnswer answer) {
        return Phrase.of("{0}. {1}", answer.item(), answer.question().prompt());
    }

    private static Handout.Block right(MarkedAnswer answer) {
        MarkedTry last = answer.last().orElseThrow();
        List<Phrase> lines = new ArrayList<>(List.of(written(last)));
        if (last.verdict().grade() == Grade.REMARK) {
            lines.add(last.verdict().message());
        }
        return new Handout.Block(numbered(answer), lines, List.of());
    }

    private static Phrase written(MarkedTry one) {
        return Phrase.of("You wrote: {0}", Phrase.typed(one.answer()));
    }

    private static Handout.Block again(MarkedAnswer answer) {
        Question question = answer.question();
        List<Phrase> lines = new ArrayList<>();
        answer.last()
                .ifPresentOrElse(
                        last -> {
                            lines.add(written(last));
                            lines.addAll(mistake(question, last.verdict()));
                        },
                        () -> lines.add(Phrase.sentence("No answer.")));
        lines.add(Phrase.of("A right answer: {0}", Worksheet.answer(question)));
        lines.add(Phrase.of("The way: {0}", question.derivation()));
        return new Handout.Block(numbered(answer), lines, List.of());
    }

    private static List<Phrase> mistake(Question question, Verdict verdict) {
        List<Phrase> lines = new ArrayList<>();
        Misconception.find(verdict.misconception())
                .ifPresent(made -> lines.add(Phrase.of("The mistake: {0}", made.words())));
        lines.add(question.explain(verdict));
        return lines;
    }

    /** For each skill that went wrong the sentence that practises it where it did. */
    private static List<Handout.Block> practice(MarkedHandIn marked) {
        Map<String, Set<Key>> wanted = new LinkedHashMap<>();
        marked.answers().stream()
                .filter(answer -> !answer.isRight())
                .map(MarkedAnswer::question)
                .forEach(question -> wanted.computeIfAbsent(question.skillId(), id -> new LinkedHashSet<>())
                        .add(question.key()));
        List<Phrase> sentences = new ArrayList<>();
        wanted.forEach((skill, keys) -> keys.forEach(key ->
                sentences.add(Phrase.toType("practise " + skill + " in " + key.tonic() + (key.isMinor() ? "m" : "")))));
        return sentences.isEmpty() ? List.of() : List.of(new Handout.Block(Phrase.NOTHING, sentences, List.of()));
    }
}
