package monochord.batch;

import java.nio.file.Path;
import java.util.List;

/**
 * A Maven that only pretends, and builds in steps.
 *
 * @param out its folder
 * @param log open as long as it lives
 */
record PretendedMaven(Path out, Path log, boolean isBroken, int[] step) {
    private static final List<String> STEPS = List.of(
            "build.log:[INFO] Downloading from central: a.pom\n",
            "build.log:[INFO] --- compiler:3.14.1:compile (default-compile) @ monochord ---\n",
            "monochord.jar:half a ",
            "build.log:[INFO] --- jar:3.5.0:jar (default-jar) @ monochord ---\n",
            "monochord.jar:jar",
            "lib/chords.jar:chords",
            "lib/tunes.jar:tu",
            "lib/tunes.jar:tunes",
            "libraries:lib/chords.jar:lib/tunes.jar");

    /** How many steps a whole build has. */
    static final int COUNT = STEPS.size();

    PretendedMaven(Path out, Path log, boolean isBroken) {
        this(out, log, isBroken, new int[1]);
    }

    /** Takes the next step. @return whether that was the last */
    boolean goOn() {
        if (isBroken) {
            return true;
        }
        String[] fileAndText = STEPS.get(step[0]++).split(":", 2);
        boolean isLog = fileAndText[0].equals("build.log");
        WindowsHouse.put(isLog ? log : out.resolve(fileAndText[0]), fileAndText[1], isLog);
        return step[0] == COUNT;
    }
}
