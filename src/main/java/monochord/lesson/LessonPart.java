package monochord.lesson;

import java.util.List;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.theory.Key;

/** A part of a lesson: a stretch of prose or one live block. */
public sealed interface LessonPart {
    /** Where the part begins in its file, counted from 1. */
    int line();

    /** What stands between two live blocks; its text still holds its fills, see {@link Filling}. */
    record ProsePart(int line, List<ProseBlock> blocks) implements LessonPart {
        public ProsePart {
            blocks = List.copyOf(blocks);
        }

        /** Without the blocks before this one, counted from 0. */
        public ProsePart from(int block) {
            return new ProsePart(line, blocks.subList(block, blocks.size()));
        }

        /** The blocks before this one. */
        public ProsePart upTo(int block) {
            return new ProsePart(line, blocks.subList(0, block));
        }
    }

    /** @param sentence one line as {@link monochord.harmony.MusicText} reads it */
    record Show(int line, String sentence) implements LessonPart {}

    /** @param music one line as {@link monochord.harmony.MusicText} reads it */
    record Listen(int line, String music) implements LessonPart {}

    /** @param music two lines or more, to be played one after the other */
    record Compare(int line, List<String> music) implements LessonPart {
        public Compare {
            music = List.copyOf(music);
        }
    }

    /** @param tune some bars of a tune from a file, in the key in which it is written there */
    record TunePart(int line, TuneExcerpt tune) implements LessonPart {}

    /** What ends a page with questions. */
    sealed interface Asks extends LessonPart {
        /**
         * The questions of this part.
         *
         * @param lessonKey what {@code same} stands for
         */
        List<Question> questions(Key lessonKey, long seed);
    }

    /** Questions that are drawn already, whatever the key and the seed. */
    record DrawnQuestions(int line, List<Question> questions) implements Asks {
        public DrawnQuestions {
            questions = List.copyOf(questions);
        }

        @Override
        public List<Question> questions(Key lessonKey, long seed) {
            return questions;
        }
    }

    /**
     * Questions on one skill.
     *
     * @param subject what about, several of them parted by semicolons, or null to let the skill pick
     * @param count how many questions, from 1 to 20
     * @param answer what the author wants to have shown as the right answer, or null for the one worked out
     */
    record Ask(int line, Skill skill, String subject, Keys keys, int count, String answer) implements Asks {
        /** The highest number of questions one block asks. */
        public static final int MOST = 20;

        /** What is asked about, one after the other and round again; empty where the skill picks. */
        public List<String> subjects() {
            return subject == null ? List.of() : List.of(subject.split(" *; *"));
        }

        /**
         * The questions of this block, fewer than {@link #count} only where another would repeat the one before it.
         *
         * @param lessonKey what {@code same} stands for
         */
        @Override
        public List<Question> questions(Key lessonKey, long seed) {
            return Asking.questions(this, lessonKey, seed);
        }
    }

    /** @param text Java, to be run only after the learner has said yes */
    record Code(int line, String text) implements LessonPart {}
}
