package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Giveaway;
import monochord.practice.Question;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Look;
import monochord.theory.Key;
import monochord.theory.Signs;
import org.junit.jupiter.api.Test;

class ToldBeforeAskedTest {
    private static final Look LOOK = new Look(4000, Signs.MUSIC, false, false);

    @Test
    void report() {
        List<String> told = new ArrayList<>();
        for (LibraryEntry lesson : new Course(Path.of("lessons")).library().entries()) {
            for (Key key : List.of(Key.parse("C"), Key.parse("D"))) {
            for (long seed = 0; seed < 4; seed++) {
                walk(lesson, key, seed, told);
            }}
        }
        told.stream().distinct().forEach(System.out::println);
        assertEquals(0, 0);
    }

    private static void walk(LibraryEntry lesson, Key key, long seed, List<String> told) {
        Course course = new Course(Path.of("lessons"));
        Sitting sitting = new Sitting(Ear.silent(), new Random(seed)::nextLong, Path.of(""), course);
        sitting.faces(new Look(80, Signs.MUSIC, false, false), 24);
        sitting.settle(key);
        Answer page = course.begin(lesson, key, sitting);
        StringBuilder said = new StringBuilder();
        while (course.isOpen() || sitting.desk().isOpen()) {
            said.append(page.text(LOOK).plain()).append('\n');
            if (sitting.desk().isOpen()) {
                Question question = sitting.desk().question();
                for (String line : said.toString().split("\n")) {
                    if (line.equals(question.prompt()) || line.contains(question.prompt()) || question.isByEar()) continue;
                    for (String sentence : line.split("(?<=[.;]) ")) {
                        if (Giveaway.isIn(sentence, question)) {
                            told.add("TOLD " + lesson.number() + " [" + key.tonic() + "] " + question.skillId() + " of " + question.subject() + " in " + question.key() + " = " + question.expected() + " <<< " + sentence);
                        }
                    }
                }
                said.setLength(0);
                page = sitting.teaching().answer(question.expected());
                String text = page.text(LOOK).plain();
                said.append(text.substring(text.indexOf('\n') + 1));
                if (!sitting.desk().isOpen()) { page = course.isOpen() ? sitting.teaching().goOn() : page; } else {page = monochord.shell.answer.Saying.of("");}
            } else {
                page = sitting.teaching().goOn();
            }
        }
    }
}
