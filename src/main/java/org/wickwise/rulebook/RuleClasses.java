package org.wickwise.rulebook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The classes of compiled rules, held in memory. Nearly all of them are wanted at once, and no file stays open that
 * another process may want to replace.
 */
final class RuleClasses extends ClassLoader {

    static {
        registerAsParallelCapable();
    }

    private final Map<String, byte[]> entries;

    private RuleClasses(Map<String, byte[]> entries, ClassLoader program) {
        super(program);
        this.entries = entries;
    }

    /**
     * @param jar the content of a jar
     * @throws IOException when it cannot be unpacked
     */
    static RuleClasses in(byte[] jar) throws IOException {
        Map<String, byte[]> entries = new HashMap<>();
        try (ZipInputStream unpacked = new ZipInputStream(new ByteArrayInputStream(jar))) {
            for (ZipEntry entry = unpacked.getNextEntry(); entry != null; entry = unpacked.getNextEntry()) {
                if (!entry.isDirectory()) {
                    entries.put(entry.getName(), unpacked.readAllBytes());
                }
            }
        }
        return new RuleClasses(entries, RuleClasses.class.getClassLoader());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] found = entries.get(name.replace('.', '/') + ".class");
        if (found == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, found, 0, found.length);
    }

    @Override
    public InputStream getResourceAsStream(String name) {
        byte[] found = entries.get(name);
        return found == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(found);
    }
}
