package monochord.cell.protocol;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;

/**
 * A message on its way, and the request it belongs to: requests are counted from 1, and what comes back bears the number of
 * the request it answers. What bears a later number than the last request is forged.
 */
public record Frame(int request, Message message) {
    public void write(DataOutputStream out) throws IOException {
        out.writeInt(request);
        message.write(out);
    }

    /** @throws IOException if there is no further frame, or what comes is none */
    public static Frame read(DataInputStream in) throws IOException {
        return new Frame(in.readInt(), Message.read(in));
    }
}
