package reseat.console.house;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes what a module exports: its packages, their public types, and what others see of them. */
final class ApiText {

    private static final int SHOWN =
            Modifier.PUBLIC | Modifier.PROTECTED | Modifier.STATIC | Modifier.FINAL;

    private ApiText() {}

    static String of(Module module, Path classes) throws IOException {
        StringBuilder text = new StringBuilder();
        TreeSet<String> packages = new TreeSet<>();
        for (ModuleDescriptor.Exports exports : module.getDescriptor().exports()) {
            if (!exports.isQualified()) {
                packages.add(exports.source());
            }
        }
        for (String name : packages) {
            text.append("package ").append(name).append('\n');
            types(module, classes, name).values().forEach(type -> write(type, text));
        }
        return text.toString();
    }

    private static Map<String, Class<?>> types(Module module, Path classes, String name)
            throws IOException {
        Map<String, Class<?>> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(classes.resolve(name.replace('.', '/')))) {
            files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(".class") && !file.equals("package-info.class"))
                    .map(file -> Class.forName(module, name + "." + file.replace(".class", "")))
                    .filter(ApiText::visible)
                    .forEach(type -> found.put(type.getName(), type));
        }
        return found;
    }

    private static boolean visible(Class<?> type) {
        return shown(type.getModifiers())
                && !type.isAnonymousClass()
                && !type.isLocalClass()
                && (type.getDeclaringClass() == null || visible(type.getDeclaringClass()));
    }

    private static boolean shown(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    private static void write(Class<?> type, StringBuilder text) {
        String above =
                Stream.concat(
                                Stream.ofNullable(type.getGenericSuperclass())
                                        .filter(t -> t != Object.class),
                                Arrays.stream(type.getGenericInterfaces()))
                        .map(Type::getTypeName)
                        .collect(Collectors.joining(", "));
        String permitted =
                type.isSealed()
                        ? Arrays.stream(type.getPermittedSubclasses())
                                .map(Class::getName)
                                .sorted()
                                .collect(Collectors.joining(", "))
                        : "";
        text.append("  ")
                .append(head(type))
                .append(above.isEmpty() ? "" : " : " + above)
                .append(permitted.isEmpty() ? "" : " permits " + permitted)
                .append(deprecated(type))
                .append('\n');
        List<String> lines = new ArrayList<>();
        if (type.isRecord()) {
            lines.add(
                    "("
                            + Arrays.stream(type.getRecordComponents())
                                    .map(c -> c.getGenericType().getTypeName() + " " + c.getName())
                                    .collect(Collectors.joining(", "))
                            + ")");
        }
        members(type.getDeclaredFields()).map(f -> line(f)).forEach(lines::add);
        members(type.getDeclaredConstructors())
                .map(c -> line(c, type.getSimpleName()))
                .forEach(lines::add);
        members(type.getDeclaredMethods())
                .map(m -> line(m, m.getGenericReturnType().getTypeName() + " " + m.getName()))
                .forEach(lines::add);
        lines.stream().sorted().forEach(line -> text.append("    ").append(line).append('\n'));
    }

    private static String head(Class<?> type) {
        String kind =
                type.isAnnotation()
                        ? "annotation "
                        : type.isInterface()
                                ? "interface "
                                : type.isRecord() ? "record " : type.isEnum() ? "enum " : "class ";
        boolean open = !type.isInterface() && !type.isEnum() && !type.isRecord();
        return (open ? modifiers(type.getModifiers() & ~Modifier.STATIC) : "")
                + (open && Modifier.isAbstract(type.getModifiers()) ? "abstract " : "")
                + kind
                + type.getName()
                + (type.getTypeParameters().length == 0
                        ? ""
                        : Arrays.stream(type.getTypeParameters())
                                .map(t -> t + " extends " + Arrays.toString(t.getBounds()))
                                .collect(Collectors.joining(", ", "<", ">")));
    }

    private static <M extends Member> Stream<M> members(M[] all) {
        return Arrays.stream(all).filter(m -> !m.isSynthetic() && shown(m.getModifiers()));
    }

    private static String line(Field field) {
        return modifiers(field.getModifiers())
                + field.getGenericType().getTypeName()
                + " "
                + field.getName()
                + deprecated(field);
    }

    private static String line(Executable method, String name) {
        String defaults = method instanceof Method m && m.isDefault() ? "default " : "";
        String thrown =
                Arrays.stream(method.getGenericExceptionTypes())
                        .map(Type::getTypeName)
                        .sorted()
                        .collect(Collectors.joining(", "));
        String typed =
                Arrays.stream(method.getTypeParameters())
                        .map(t -> t + " extends " + Arrays.toString(t.getBounds()))
                        .collect(Collectors.joining(", "));
        return modifiers(method.getModifiers())
                + (Modifier.isAbstract(method.getModifiers()) ? "abstract " : "")
                + defaults
                + (typed.isEmpty() ? "" : "<" + typed + "> ")
                + (method instanceof Constructor<?> ? "new " : "")
                + name
                + Arrays.stream(method.getGenericParameterTypes())
                        .map(Type::getTypeName)
                        .collect(Collectors.joining(", ", "(", ")"))
                + (thrown.isEmpty() ? "" : " throws " + thrown)
                + deprecated(method);
    }

    private static String modifiers(int modifiers) {
        String shown = Modifier.toString(modifiers & SHOWN);
        return shown.isEmpty() ? "" : shown + " ";
    }

    private static String deprecated(AnnotatedElement element) {
        return element.isAnnotationPresent(Deprecated.class) ? " deprecated" : "";
    }
}
