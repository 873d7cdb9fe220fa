package monochord.view.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.classroom.HandInFiles;
import monochord.classroom.HandInFiles.MarkedFile;
import monochord.classroom.MarkedAnswer;
import monochord.classroom.MarkedAnswer.MarkedTry;
import monochord.classroom.MarkedHandIn;
import monochord.classroom.PupilCode;
import monochord.lesson.Fault;
import monochord.practice.Grade;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Statement;
import monochord.view.Table;

/**
 * Hand-ins, marked: for a program one line an answer and one a file, for a teacher a table. They are marked when they are
 * shown, so that not all of them are held at once.
 */
public final class MarkAnswer implements Answer {
    /** More faults than these nobody reads in one go. */
    private static final int MOST_FAULTS = 20;

    private final HandInFiles files;
    private final MarkKeeping keeping;
    private List<MarkedRow> rows;
    private Statement kept = Statement.of();
    private int status = DONE;

    /** What else is done with what is marked. */
    public interface MarkKeeping {
        /** As each is marked. */
        void take(MarkedHandIn marked);

        /** Behind the last: what is to be told of it. */
        Statement done();
    }

    /** A file in the table. */
    private record MarkedRow(MarkedHandIn summary, int right, int of, Optional<String> doubles) {}

    public MarkAnswer(HandInFiles files, MarkKeeping keeping) {
        this.files = files;
        this.keeping = keeping;
    }

    private void mark(Consumer<MarkedFile> to) {
        files.mark(marked -> {
            keeping.take(marked.handIn());
            boolean sound = marked.handIn().faults().isEmpty()
                    && !marked.handIn().signs().altered();
            status = sound ? status : NO;
            to.accept(marked);
        });
        kept = keeping.done();
        status = Math.max(status, kept.status());
    }

    private List<MarkedRow> rows() {
        if (rows == null) {
            List<MarkedRow> marked = new ArrayList<>();
            mark(one -> marked.add(new MarkedRow(
                    one.handIn().withoutAnswers(),
                    one.handIn().right(),
                    one.handIn().of(),
                    one.doubles())));
            rows = marked;
        }
        return rows;
    }

    @Override
    public StyledText text(Look look) {
        Table table = Table.of(
                Table.Column.left(Phrase.of("code")),
                Table.Column.right(Phrase.of("right")),
                Table.Column.left(Phrase.of("assignment")),
                Table.Column.left(Phrase.of("to know")));
        rows().forEach(row -> table.row(cells(row)));
        StyledText.Builder text = StyledText.builder(look.reader());
        text.lines(table.text(look));
        faults(look).ifPresent(text::lines);
        return text.lines(kept.text(look)).build();
    }

    private static List<Phrase> cells(MarkedRow row) {
        MarkedHandIn summary = row.summary();
        Phrase code = summary.code().map(PupilCode::text).map(Phrase::typed).orElse(Phrase.of("nobody"));
        Phrase right = row.of() == 0 ? Phrase.NOTHING : Phrase.of("{0} of {1}", row.right(), row.of());
        return List.of(code, right, Phrase.typed(summary.assignment()), toKnow(row));
    }

    private static Phrase toKnow(MarkedRow row) {
        List<Phrase> said = new ArrayList<>();
        MarkedHandIn summary = row.summary();
        if (summary.code().isEmpty()) {
            said.add(Phrase.of("{0} was not marked", Phrase.typed(summary.file())));
        }
        if (summary.signs().unknown()) {
            said.add(Phrase.of("no such code in the class"));
        }
        if (summary.signs().altered()) {
            said.add(Phrase.of("altered"));
        }
        if (summary.signs().late()) {
            said.add(Phrase.of("late"));
        }
        row.doubles().ifPresent(first -> said.add(Phrase.of("again, after {0}", Phrase.typed(first))));
        if (summary.code().isPresent() && !summary.faults().isEmpty()) {
            int count = summary.faults().size();
            said.add(Phrase.counted(count, "one fault", "{0} faults", count));
        }
        return Phrase.joined(", ", said);
    }

    private Optional<StyledText> faults(Look look) {
        List<Fault> faults =
                rows().stream().flatMap(row -> row.summary().faults().stream()).toList();
        StyledText.Builder text =
                StyledText.builder(look.naming(NoteNaming.ENGLISH).reader());
        faults.stream().limit(MOST_FAULTS).forEach(fault -> text.line(fault.phrase()));
        int left = faults.size() - MOST_FAULTS;
        if (left > 0) {
            text.line(Phrase.counted(left, "And one more fault.", "And {0} more faults.", left));
        }
        return faults.isEmpty() ? Optional.empty() : Optional.of(text.build().wrapped(look.width()));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "mark").put("files", files.count());
    }

    @Override
    public void jsonLines(Consumer<Json> lines) {
        mark(marked -> {
            marked.handIn().answers().forEach(answer -> lines.accept(answer(answer)));
            lines.accept(file(marked));
        });
        if (kept.status() != DONE) {
            Json failed = new Json();
            kept.json(failed);
            lines.accept(failed);
        }
    }

    private static Json answer(MarkedAnswer answer) {
        Optional<MarkedTry> last = answer.last();
        Json json = new Json()
                .put("kind", "answer")
                .put("assignment", answer.assignment())
                .put("code", answer.code().text())
                .put("item", answer.item())
                .put("skill", answer.question().skillId())
                .put("subject", answer.question().subject())
                .put("key", answer.question().key().toString())
                .put("seed", answer.question().seed())
                .put("answer", last.map(MarkedTry::answer).orElse(null))
                .put("tries", answer.tries().size())
                .put("tried", answer.tries().stream().map(MarkedTry::answer).toList())
                .put(
                        "verdict",
                        last.map(one -> one.verdict().grade().toString()).orElse(null))
                .put(
                        "misconception",
                        last.map(one -> one.verdict().misconception()).orElse(null))
                .put(
                        "message",
                        last.map(one -> one.verdict().message().toString()).orElse(null))
                .put("expected", answer.question().expected());
        return json.put("first", answer.tries().isEmpty() ? null : first(answer).toString())
                .put("help", answer.help())
                .put("seconds", answer.seconds())
                .put("altered", answer.altered());
    }

    private static Grade first(MarkedAnswer answer) {
        return answer.tries().get(0).verdict().grade();
    }

    private static Json file(MarkedFile marked) {
        MarkedHandIn handIn = marked.handIn();
        return new Json()
                .put("kind", "file")
                .put("file", handIn.file())
                .put("assignment", handIn.assignment())
                .put("code", handIn.code().map(PupilCode::text).orElse(null))
                .put("right", handIn.right())
                .put("of", handIn.of())
                .put("altered", handIn.signs().altered())
                .put("late", handIn.signs().late())
                .put("unknown", handIn.signs().unknown())
                .put("doubles", marked.doubles().orElse(null))
                .put("given", handIn.given().map(Object::toString).orElse(null))
                .objects(
                        "faults",
                        handIn.faults(),
                        (object, fault) -> object.put("path", fault.path())
                                .put("line", fault.line())
                                .put("column", fault.column())
                                .put("what", fault.what().toString())
                                .put("instead", fault.instead().toString()));
    }

    @Override
    public int status() {
        return status;
    }
}
