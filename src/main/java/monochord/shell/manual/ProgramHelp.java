package monochord.shell.manual;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;

/** What help on the command line says beyond the prompt's: the options, and what the exit status means. */
public final class ProgramHelp {
    /** A line for each option, and one for the status. */
    public static final Answer ANSWER = new Statement(lines(), Answer.DONE);

    private ProgramHelp() {}

    private static List<Phrase> lines() {
        List<Phrase> lines = new ArrayList<>();
        for (ProgramOption option : ProgramOption.values()) {
            lines.add(Phrase.of("{0}: {1}", option.form(), option.purpose()));
        }
        lines.add(
                Phrase.of("Exit status: 0 done, 1 the answer is no, 2 it cannot be read, 3 something outside failed."));
        return lines;
    }
}
