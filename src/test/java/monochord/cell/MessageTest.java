package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Random;
import monochord.cell.protocol.Message;
import monochord.cell.protocol.MessageKind;
import org.junit.jupiter.api.Test;

class MessageTest {
    private static Message read(byte... bytes) throws IOException {
        return Message.read(new DataInputStream(new ByteArrayInputStream(bytes)));
    }

    @Test
    void whatIsWrittenIsRead() throws IOException {
        Message message = Message.of(MessageKind.VALUE, "verse", "", "F C G A♭ 𝄞", "\0\n");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        message.write(new DataOutputStream(bytes));
        assertEquals(message, read(bytes.toByteArray()));
    }

    /** Guard: {@code Message.within}; without it a length of two billion would be made room for. */
    @Test
    void nothingIsTakenThatIsTooLong() {
        assertEquals(
                "no message of a cell: 2147483647 where at most 262144 can stand",
                assertThrows(
                                IOException.class,
                                () -> read((byte) 0, (byte) 0, (byte) 1, (byte) 127, (byte) -1, (byte) -1, (byte) -1))
                        .getMessage());
        assertEquals(
                "no message of a cell: -1 where at most 262144 can stand",
                assertThrows(
                                IOException.class,
                                () -> read((byte) 0, (byte) 0, (byte) 1, (byte) -1, (byte) -1, (byte) -1, (byte) -1))
                        .getMessage());
        assertTrue(assertThrows(IOException.class, () -> read((byte) 0, (byte) 127, (byte) 0))
                .getMessage()
                .contains("32512 where at most 400"));
        assertTrue(assertThrows(IOException.class, () -> read((byte) 99, (byte) 0, (byte) 0))
                .getMessage()
                .startsWith("no message of a cell: 99"));
    }

    /** Whatever comes is a message or an {@link IOException}. */
    @Test
    void noiseBreaksNothing() {
        Random chance = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            byte[] noise = new byte[chance.nextInt(40)];
            chance.nextBytes(noise);
            try {
                assertTrue(read(noise).texts().size() <= Message.MOST_TEXTS);
            } catch (IOException refused) {
                assertNotNull(refused);
            }
        }
    }
}
