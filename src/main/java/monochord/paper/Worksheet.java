package monochord.paper;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import monochord.practice.AnswerForm;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Questions for a class to answer by hand: a sheet with room to write, and its key, which is a handout of its own so that it
 * is not printed with the sheet. Both bear the same short code. The same questions give the same sheet.
 *
 * @param questions none of them heard
 * @param rooms where each is answered, as many as there are questions
 */
public record Worksheet(Phrase title, List<Question> questions, List<AnswerRoom> rooms) {
    /** Letters and digits that nobody takes for each other. */
    private static final String SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int CODE_LENGTH = 5;

    /** @throws IllegalArgumentException if a question is heard, or there are not as many rooms as questions */
    public Worksheet {
        questions = List.copyOf(questions);
        rooms = List.copyOf(rooms);
        if (questions.stream().anyMatch(Question::isByEar) || rooms.size() != questions.size()) {
            throw new IllegalArgumentException("paper has no sound, and each question needs its room");
        }
    }

    /** With the room that suits each answer. */
    public static Worksheet of(Phrase title, List<Question> questions) {
        return new Worksheet(
                title,
                questions,
                questions.stream().map(question -> room(question.form())).toList());
    }

    /** With the same room for all. */
    public static Worksheet of(Phrase title, List<Question> questions, AnswerRoom room) {
        return new Worksheet(
                title, questions, questions.stream().map(one -> room).toList());
    }

    private static AnswerRoom room(AnswerForm form) {
        return switch (form) {
            case VOICING -> AnswerRoom.HANDS;
            case PROGRESSION -> AnswerRoom.LINES;
            default -> AnswerRoom.LINE;
        };
    }

    /** Five signs that tell these questions from others, so that a sheet finds its key. */
    public String code() {
        CRC32 sum = new CRC32();
        for (Question question : questions) {
            sum.update((question.prompt() + "\n" + question.expected() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_LENGTH; i++) {
            code.append(SIGNS.charAt((int) (sum.getValue() >> 5 * i & 31)));
        }
        return code.toString();
    }

    /** What the class gets. */
    public Handout sheet() {
        List<Handout.Block> blocks = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            blocks.add(
                    new Handout.Block(numbered(i), List.of(), List.of(new Handout.HandoutFigure.Room(rooms.get(i)))));
        }
        return new Handout(
                title,
                List.of(Phrase.of("Name: {0}", Phrase.typed("_".repeat(40)))),
                List.of(new Handout.HandoutSection(Phrase.NOTHING, across(), blocks)),
                Phrase.of("Sheet {0}", Phrase.typed(code())));
    }

    /** What the teacher keeps: each answer, and the way to it. */
    public Handout key() {
        List<Handout.Block> blocks = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            Question question = questions.get(i);
            Phrase answer = Phrase.of("Answer: {0}", answer(question));
            blocks.add(new Handout.Block(numbered(i), List.of(answer, question.derivation()), List.of()));
        }
        return new Handout(
                Phrase.of("Key: {0}", title),
                List.of(),
                List.of(new Handout.HandoutSection(Phrase.NOTHING, 2, blocks)),
                Phrase.of("Key to sheet {0}", Phrase.typed(code())));
    }

    /** One line of a question beside another; staves and long answers go across the page. */
    private int across() {
        boolean narrow = rooms.stream().allMatch(room -> room != AnswerRoom.HANDS && room != AnswerRoom.LINES);
        return narrow ? 2 : 1;
    }

    private Phrase numbered(int index) {
        return Phrase.of("{0}. {1}", index + 1, questions.get(index).prompt());
    }

    /** As it would be printed: word by word a note, a chord or a numeral, and anything else as it stands. */
    static Phrase answer(Question question) {
        List<Phrase> words = new ArrayList<>();
        for (String word : question.expected().split(" ")) {
            Optional<Phrase> read = Optional.empty();
            for (SheetPart reading : READINGS) {
                read = read.isPresent() ? read : reading.of(word);
            }
            words.add(read.orElse(Phrase.typed(word)));
        }
        return Phrase.row(words);
    }

    /** One way to read a word of an answer. */
    private interface SheetPart {
        Phrase read(String word);

        default Optional<Phrase> of(String word) {
            try {
                Phrase phrase = read(word);
                return phrase.toString().isBlank() ? Optional.empty() : Optional.of(phrase);
            } catch (Unreadable otherwise) {
                return Optional.empty();
            }
        }
    }

    private static final List<SheetPart> READINGS = List.of(
            word -> Phrase.of("{0}", NoteName.parse(word)),
            word -> Phrase.of("{0}", Chord.parse(word)),
            word -> Phrase.of("{0}", Numeral.parse(word)));
}
