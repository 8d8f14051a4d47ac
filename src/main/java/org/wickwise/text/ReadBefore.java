package org.wickwise.text;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wickwise.text.Node.Mapping;

/**
 * YAML files that were read when the program was packaged, each with the whole text it was read from. Only a file with exactly
 * that text is taken from here: one changed letter, and it is read anew.
 */
public final class ReadBefore {

    /** Where the class path of a package holds them. */
    public static final String RESOURCE = "META-INF/wickwise/files-read-before";

    /** Those of the package; none where the program is not packaged. */
    static final ReadBefore SHIPPED = onTheClassPath();

    private final Map<String, ByteBuffer> nodesOfText;

    private ReadBefore(Map<String, ByteBuffer> nodesOfText) {
        this.nodesOfText = nodesOfText;
    }

    /**
     * What {@link #RESOURCE} is to hold.
     *
     * @param texts what stands in the files, each of which {@link YamlFile} can read
     */
    public static byte[] written(List<String> texts) {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (DataOutputStream to = new DataOutputStream(written)) {
            for (String text : texts) {
                for (byte[] part : List.of(
                        text.getBytes(StandardCharsets.UTF_8), NodeBytes.written(YamlFile.parse("a file", text)))) {
                    to.writeInt(part.length);
                    to.write(part);
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory cannot fail", e);
        }
        return written.toByteArray();
    }

    static ReadBefore in(byte[] written) {
        Map<String, ByteBuffer> nodesOfText = new HashMap<>();
        ByteBuffer bytes = ByteBuffer.wrap(written);
        while (bytes.hasRemaining()) {
            byte[] text = new byte[bytes.getInt()];
            bytes.get(text);
            int length = bytes.getInt();
            nodesOfText.put(new String(text, StandardCharsets.UTF_8), bytes.slice(bytes.position(), length));
            bytes.position(bytes.position() + length);
        }
        return new ReadBefore(nodesOfText);
    }

    /** What a file with this text holds; empty where it was not read before. */
    Optional<Mapping> find(String file, String text) {
        return Optional.ofNullable(nodesOfText.get(text)).map(nodes -> NodeBytes.read(nodes.duplicate(), file));
    }

    private static ReadBefore onTheClassPath() {
        try (InputStream resource = ReadBefore.class.getClassLoader().getResourceAsStream(RESOURCE)) {
            return in(resource == null ? new byte[0] : resource.readAllBytes());
        } catch (IOException e) {
            return new ReadBefore(Map.of());
        }
    }
}
