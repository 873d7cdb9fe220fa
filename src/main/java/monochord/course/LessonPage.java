package monochord.course;

import java.util.List;
import monochord.lesson.LessonPart;

/**
 * As much of a lesson as a learner sees at once: prose and pictures, and at its end perhaps something to do.
 *
 * @param section where it begins, from 0, see {@link LessonPages#sections}
 * @param block of the prose of that section, from 0
 * @param standsAlone whether the window is too low for it under what is said to an answer
 */
record LessonPage(int section, int block, List<LessonPart> parts, boolean standsAlone) {
    LessonPage {
        parts = List.copyOf(parts);
    }

    LessonPart last() {
        return parts.get(parts.size() - 1);
    }

    /** Whether this place in the lesson lies before the page. */
    boolean isBehind(int otherSection, int otherBlock) {
        return section > otherSection || section == otherSection && block > otherBlock;
    }

    /** What is shown before anything is asked. */
    List<LessonPart> shown() {
        return last() instanceof LessonPart.Asks ? parts.subList(0, parts.size() - 1) : parts;
    }
}
