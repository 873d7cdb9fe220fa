package monochord.course;

import monochord.lesson.LessonPart;

/** How much of a lesson a learner sees at once; two that are equal part every lesson alike. */
public interface Measure {
    /** Lines of the window, {@link Integer#MAX_VALUE} where nothing scrolls away. */
    int rows();

    /** Lines that a part takes; of a part that asks or plays, as much as is to be seen together. */
    int lines(LessonPart part);
}
