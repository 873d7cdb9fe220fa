package monochord.cell.protocol;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One message between the line and its cell, in a form that neither can be made to choke on: a kind, and some texts whose
 * number and lengths have bounds.
 */
public record Message(MessageKind kind, List<String> texts) {
    /** The most texts of a message. */
    public static final int MOST_TEXTS = 400;
    /** The most bytes of a text; longer ones are refused by whoever reads them. */
    public static final int MOST_BYTES = 1 << 18;

    private static final MessageKind[] KINDS = MessageKind.values();

    public Message {
        texts = List.copyOf(texts);
    }

    public static Message of(MessageKind kind, String... texts) {
        return new Message(kind, List.of(texts));
    }

    /** One text, or nothing where the message is too short to have it. */
    public String text(int index) {
        return index < texts.size() ? texts.get(index) : "";
    }

    /** A whole number among the texts, or {@code otherwise} where there is none. */
    public int number(int index, int otherwise) {
        try {
            return Integer.parseInt(text(index));
        } catch (NumberFormatException none) {
            return otherwise;
        }
    }

    /** The texts from this one on. */
    public List<String> from(int index) {
        return texts.subList(Math.min(index, texts.size()), texts.size());
    }

    public void write(DataOutputStream out) throws IOException {
        out.writeByte(kind.ordinal());
        out.writeShort(texts.size());
        for (String text : texts) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            out.writeInt(bytes.length);
            out.write(bytes);
        }
        out.flush();
    }

    /** @throws IOException if there is no further message, or what comes is none */
    public static Message read(DataInputStream in) throws IOException {
        MessageKind kind = KINDS[within(KINDS.length - 1, in.readUnsignedByte())];
        int count = within(MOST_TEXTS, in.readUnsignedShort());
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            byte[] bytes = new byte[within(MOST_BYTES, in.readInt())];
            in.readFully(bytes);
            texts.add(new String(bytes, StandardCharsets.UTF_8));
        }
        return new Message(kind, texts);
    }

    private static int within(int most, int number) throws IOException {
        if (number < 0 || number > most) {
            throw new IOException("no message of a cell: " + number + " where at most " + most + " can stand");
        }
        return number;
    }
}
