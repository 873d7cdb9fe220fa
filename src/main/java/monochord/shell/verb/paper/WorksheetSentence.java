package monochord.shell.verb.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.paper.AnswerRoom;
import monochord.paper.Worksheet;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Mix;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;
import monochord.shell.sentence.AskedKeys;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.WholeNumber;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Worksheets as a sentence asks for them: {@code questions triad-spelling in flats count 12 copies 30}. */
final class WorksheetSentence {
    static final String EXAMPLE = "sheet questions triad-spelling in flats count 12 --pdf triads.pdf";
    static final String COUNT = "count";
    static final String COPIES = "copies";
    static final String LINES = "lines";
    static final String STAVES = "staves";
    static final String KEYBOARDS = "keyboards";
    private static final int QUESTIONS = 10;
    private static final int MOST_QUESTIONS = 60;
    private static final int MOST_COPIES = 1000;

    private final Sentence sentence;
    private final Skill skill;
    private final List<Key> keys;
    private final int count;
    private final int copies;
    private final long seed;

    /** @param skill what stands behind {@code questions} */
    WorksheetSentence(Sentence sentence, String skill, Sitting sitting) {
        this.sentence = sentence;
        this.skill = Skills.find(skill.strip())
                .orElseThrow(() -> refused(skill, Clause.of("skills lists what can be asked")));
        this.keys = sentence.clause("in")
                .map(part -> part.read(text -> keys(text, sitting.key())))
                .orElseGet(() -> List.of(sitting.key()));
        this.count = number(COUNT, QUESTIONS, MOST_QUESTIONS);
        this.copies = number(COPIES, 1, MOST_COPIES);
        this.seed = sentence.option("seed")
                .map(part -> part.read(WholeNumber::seed))
                .orElseGet(sitting::nextSeed);
        if (skill().question(keys.get(0), seed).isByEar()) {
            throw refused(skill, Clause.of("it is asked by ear, and paper has no sound"));
        }
    }

    private Skill skill() {
        return skill;
    }

    private static Unreadable refused(String text, Clause why) {
        return Unreadable.because(text, 0, "a skill to ask on paper", why, EXAMPLE);
    }

    private static List<Key> keys(String text, Key own) {
        return AskedKeys.parse(text).in(own).stream()
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    private int number(String word, int otherwise, int most) {
        return sentence.clause(word)
                .map(part -> part.read(text -> WholeNumber.count(text, most, EXAMPLE)))
                .orElse(otherwise);
    }

    Phrase title() {
        return skill.title();
    }

    /** One after the other, each made when it is needed. */
    Stream<Worksheet> sheets() {
        return IntStream.range(0, copies).mapToObj(copy -> sheet(seed + copy));
    }

    private Worksheet sheet(long its) {
        Random chance = new Random(its);
        Question[] before = {null};
        List<Question> questions = Mix.of(skill, keys).turns(count, its).stream()
                .map(turn -> next(turn, chance, before))
                .toList();
        Phrase title = Phrase.of("{0}", skill.title());
        return room().map(room -> Worksheet.of(title, questions, room)).orElseGet(() -> Worksheet.of(title, questions));
    }

    private static Question next(Turn turn, Random chance, Question[] before) {
        before[0] = turn.question(chance::nextLong, before[0]);
        return before[0];
    }

    private Optional<AnswerRoom> room() {
        return Stream.of(LINES, STAVES, KEYBOARDS)
                .filter(word -> sentence.clause(word).isPresent())
                .findFirst()
                .map(word -> switch (word.toLowerCase(Locale.ROOT)) {
                    case LINES -> AnswerRoom.LINES;
                    case STAVES -> AnswerRoom.STAFF;
                    default -> AnswerRoom.KEYBOARD;
                });
    }
}
