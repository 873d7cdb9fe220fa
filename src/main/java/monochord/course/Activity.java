package monochord.course;

/** Something under way at the line, which goes on when the learner only says go on. */
public sealed interface Activity
        permits FirstQuestions, LessonWalk, RoomLesson, QuestionRun, NamedQuestion, RehearsalUnderWay {
    /**
     * How near to the line it stands, from 0. What begins takes the place of all that is as near or nearer; what is farther
     * off waits for it.
     */
    int nearness();
}
