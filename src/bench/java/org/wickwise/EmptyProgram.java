package org.wickwise;

import org.wickwise.text.YamlFile;

/** What {@link StartUp} compares the program with: the JVM starts, and one YAML line is read. */
public final class EmptyProgram {

    private EmptyProgram() {}

    public static void main(String[] arguments) {
        System.out.println(
                YamlFile.parse("one line", "title: ferry ink").entries().size());
    }
}
