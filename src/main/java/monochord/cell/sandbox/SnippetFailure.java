package monochord.cell.sandbox;

import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;

/**
 * What went wrong in a cell.
 *
 * @param place index of the character in the cell's text, or −1 where there is none
 * @param line the line of the text, from 1, or 0 where it does not matter
 */
record SnippetFailure(String message, int place, int line) {
    static SnippetFailure of(String message) {
        return new SnippetFailure(message, -1, 0);
    }

    Message toLine() {
        return Message.of(MessageKind.TROUBLE, Limits.cut(message), Integer.toString(place), Integer.toString(line));
    }
}
