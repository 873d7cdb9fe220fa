package monochord.shell;

import java.util.ArrayList;
import java.util.List;

/**
 * A sitting as a Markdown file: prose, and {@code console} blocks in which the lines behind a mark were typed and the
 * others came back. The first block begins with the command that opened the prompt.
 */
record WrittenSitting(List<Piece> pieces) {
    private static final String MARK = "▸";
    private static final String OPENING = "$ ";

    /** Prose as it stands, or one exchange: what was typed and what came back. */
    record Piece(boolean prose, String typed, String text) {}

    static WrittenSitting parse(List<String> lines) {
        List<Piece> pieces = new ArrayList<>();
        boolean console = false;
        for (String line : lines) {
            boolean fence = line.startsWith("```");
            if (console && !fence) {
                exchange(pieces, line);
            } else {
                pieces.add(new Piece(true, "", line));
            }
            console = fence ? line.equals("```console") : console;
        }
        return new WrittenSitting(pieces);
    }

    private static void exchange(List<Piece> pieces, String line) {
        if (line.startsWith(MARK) || line.startsWith(OPENING)) {
            pieces.add(new Piece(false, line, ""));
        } else {
            Piece last = pieces.remove(pieces.size() - 1);
            pieces.add(new Piece(last.prose, last.typed, last.text + line + "\n"));
        }
    }

    /** The lines that were typed at the prompt. */
    List<String> typed() {
        return pieces.stream()
                .filter(piece -> piece.typed.startsWith(MARK))
                .map(piece -> piece.typed.substring(MARK.length()).strip())
                .toList();
    }

    /** What was typed at the prompt and what came back, without the empty lines around it. */
    List<Piece> exchanges() {
        return pieces.stream()
                .filter(piece -> piece.typed.startsWith(MARK))
                .map(piece -> new Piece(false, piece.typed, piece.text.strip()))
                .toList();
    }

    /** The same sitting with these answers, the first to the opening. */
    WrittenSitting answered(List<String> answers) {
        List<Piece> answered = new ArrayList<>();
        int next = 0;
        for (Piece piece : pieces) {
            answered.add(piece.prose ? piece : new Piece(false, piece.typed, answers.get(next++)));
        }
        return new WrittenSitting(answered);
    }

    /** The file, with one empty line between exchanges and none at the end of a block. */
    @Override
    public String toString() {
        StringBuilder file = new StringBuilder();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean last = i + 1 == pieces.size() || pieces.get(i + 1).prose;
            String below = piece.text.isBlank() ? "" : piece.text.stripTrailing() + "\n";
            file.append(piece.prose ? piece.text + "\n" : piece.typed + "\n" + below);
            file.append(piece.prose || last ? "" : "\n");
        }
        return file.toString();
    }
}
