package monochord.shell.sitting;

import monochord.practice.Skill;

/** What becomes of questions for the ear where nothing sounds. */
public final class Silence {
    private final Sitting sitting;

    Silence(Sitting sitting) {
        this.sitting = sitting;
    }

    boolean leavesOut(Skill skill) {
        return false;
    }
}
