package monochord.shell.verb.classroom;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import monochord.classroom.MarkedHandIn;
import monochord.classroom.overview.AnswersToKeep;
import monochord.record.KeptAttempt;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Statement;
import monochord.view.classroom.MarkAnswer.MarkKeeping;

/** Puts what is marked on record, some files at a time; what cannot be kept is told, and marked all the same. */
final class MarksKept implements MarkKeeping {
    private static final int AT_A_TIME = 5000;

    private final OwnClass own;
    private final Sitting sitting;
    private final LocalDate today;
    private List<KeptAttempt> waiting = new ArrayList<>();
    private int fresh;
    private IOException failure;

    MarksKept(OwnClass own, Sitting sitting) {
        this.own = own;
        this.sitting = sitting;
        this.today = LocalDate.ofInstant(Instant.ofEpochMilli(sitting.study().now()), ZoneOffset.UTC);
    }

    @Override
    public void take(MarkedHandIn marked) {
        waiting.addAll(AnswersToKeep.of(marked, today));
        if (waiting.size() > AT_A_TIME) {
            keep();
        }
    }

    private void keep() {
        List<KeptAttempt> some = waiting;
        waiting = new ArrayList<>();
        if (own.record().isEmpty() || some.isEmpty() || failure != null) {
            return;
        }
        try {
            fresh += own.record().get().keep(some);
        } catch (IOException failed) {
            failure = failed;
        }
    }

    @Override
    public Statement done() {
        keep();
        if (failure != null) {
            return Statement.failed(Phrase.of(
                    "Nothing more could be kept: {0}", sitting.outside().told(failure)));
        }
        if (own.record().isEmpty()) {
            return Statement.of(Phrase.sentence("No record is kept in this sitting."));
        }
        return Statement.of(Phrase.counted(
                fresh,
                new Phrase.Forms(
                        "{0} answer is new on record; class shows what the class can do.",
                        "{0} answers are new on record; class shows what the class can do.",
                        "No answer is new on record; class shows what the class can do."),
                fresh));
    }
}
