package monochord.shell.verb.classroom;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.classroom.ClassList;
import monochord.classroom.PupilCode;
import monochord.lesson.Fault;
import monochord.record.ClassRecord;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Statement;
import monochord.view.Table;

/** What is done with the list and the record of a class: shown, copied, put together, forgotten. */
final class ClassKeeping {
    static final String FORGET = "forget";
    static final String LIST = "list";
    static final String COPY = "copy";
    static final String JOIN = "join";

    private final OwnClass own;
    private final Sentence sentence;
    private final Sitting sitting;

    ClassKeeping(OwnClass own, Sentence sentence, Sitting sitting) {
        this.own = own;
        this.sentence = sentence;
        this.sitting = sitting;
    }

    /** Nothing where the sentence begins with none of these words. */
    Optional<Answer> answer() throws IOException {
        String body = sentence.body().text();
        String[] words = body.split("\\s+", 2);
        String behind = words.length > 1 ? words[1] : "";
        int place = body.length() - behind.length();
        ClassRecord record = own.record().orElseThrow();
        return switch (words[0].toLowerCase(Locale.ROOT)) {
            case FORGET -> Optional.of(forget(code(behind, place), record));
            case LIST -> Optional.of(new ClassListAnswer(file(), own.list()));
            case COPY -> Optional.of(copy(behind, record));
            case JOIN -> Optional.of(join(behind, record));
            default -> Optional.empty();
        };
    }

    private String file() {
        return sitting.outside().named(ClassList.file(own.home().orElseThrow()).toString());
    }

    private PupilCode code(String text, int place) {
        return sentence.body().read(body -> {
            try {
                return PupilCode.parse(text);
            } catch (Unreadable unreadable) {
                throw unreadable.within(body, place);
            }
        });
    }

    private Answer forget(PupilCode code, ClassRecord record) throws IOException {
        boolean wasListed = ClassList.remove(ClassList.file(own.home().orElseThrow()), code);
        int answers = record.forget(code.text());
        Phrase pupil = Phrase.typed(code.text());
        if (answers == 0 && !wasListed) {
            return Statement.no(Phrase.sentence("Nothing of {0} is on record, nor on the list.", pupil));
        }
        List<Phrase> said = new ArrayList<>(List.of(Phrase.counted(
                answers,
                new Phrase.Forms(
                        "{1} is forgotten: {0} answer is off the record.",
                        "{1} is forgotten: {0} answers are off the record.",
                        "{1} is forgotten: no answer was on record."),
                answers,
                pupil)));
        if (wasListed) {
            said.add(Phrase.sentence("The code and the name are off the list."));
        }
        said.add(Phrase.sentence("Files that were handed in, pages and copies you made are yours to delete."));
        return new Statement(said, Answer.DONE);
    }

    private Answer copy(String name, ClassRecord record) {
        Path file = sentence.body().read(text -> sitting.outside().file(name));
        return NewFile.unlessThere(List.of(new NewFile.NamedPath(name, file)), sentence, sitting, () -> {
            try {
                int count = record.copy(file);
                return Statement.of(Phrase.counted(
                        count,
                        "{0} answer of pupils is in {1} now, and nothing of your own.",
                        "{0} answers of pupils are in {1} now, and nothing of your own.",
                        count,
                        Phrase.typed(name)));
            } catch (IOException failed) {
                return Statement.failed(sitting.outside().told(failed));
            }
        });
    }

    private Answer join(String name, ClassRecord record) throws IOException {
        Path file = sentence.body().read(text -> sitting.outside().file(name));
        int count = record.join(file, own.list()::admits);
        List<Phrase> said = new ArrayList<>(List.of(Phrase.counted(
                count,
                new Phrase.Forms(
                        "{0} answer came in; what was here stays.",
                        "{0} answers came in; what was here stays.",
                        "All of it was here already, or is of nobody on your list."),
                count)));
        if (count > 0 && !own.list().pupils().isEmpty()) {
            said.add(Phrase.sentence("Who is not on your list was left out."));
        }
        return new Statement(said, Answer.DONE);
    }

    /** The list as it is read, and where it is. */
    private record ClassListAnswer(String file, ClassList list) implements Answer {
        @Override
        public StyledText text(Look look) {
            StyledText.Builder text = StyledText.builder(look.reader());
            Table table = Table.of(3);
            list.pupils()
                    .forEach(one -> table.row(
                            Phrase.typed(one.code().text()), Phrase.typed(one.name()), Phrase.typed(one.group())));
            text.lines(table.text(look));
            for (Fault fault : list.faults()) {
                text.line(fault.phrase());
            }
            Phrase place = Phrase.typed(file);
            text.line(
                    list.pupils().isEmpty()
                            ? Phrase.sentence(
                                    "There is no list yet; any code counts. Lines such as {0} in {1} make one.",
                                    Phrase.typed("7b-04,Ana,Thursday"), place)
                            : Phrase.sentence("The list is {0}; nothing else knows a name.", place));
            return text.build().wrapped(look.width());
        }

        @Override
        public void json(Json json) {
            json.put("kind", "list")
                    .objects(
                            "pupils",
                            list.pupils(),
                            (object, one) -> object.put("code", one.code().text())
                                    .put("name", one.name())
                                    .put("group", one.group()));
            json.put("faults", list.faults());
        }

        @Override
        public int status() {
            return list.faults().isEmpty() ? DONE : NO;
        }
    }
}
