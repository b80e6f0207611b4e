package reseat.build;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Writes the Javadoc of the exported packages to one file, which
 * {@code reseat.script.ApiIndex} reads. Run by the build. Arguments: the file to write, then source
 * folders, each with its {@code module-info.java}.
 *
 * <p>A line is: type, member (empty for the type itself), signature, text; separated by tabs, with
 * {@code \\n} for a line feed.
 */
public final class ApiIndexer {

    private final DocTrees docs;
    private final TreeSet<String> lines = new TreeSet<>();

    private ApiIndexer(DocTrees docs) {
        this.docs = docs;
    }

    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[0]);
        List<Path> files = new ArrayList<>();
        for (String sources : Arrays.asList(args).subList(1, args.length)) {
            files.addAll(exported(Path.of(sources)));
        }
        if (Files.exists(out) && files.stream().allMatch(file -> isOlder(file, out))) {
            return;
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, UTF_8)) {
            JavacTask task =
                    (JavacTask)
                            compiler.getTask(
                                    null,
                                    manager,
                                    null,
                                    List.of("-proc:none"),
                                    null,
                                    manager.getJavaFileObjectsFromPaths(files));
            ApiIndexer indexer = new ApiIndexer(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                for (Tree tree : unit.getTypeDecls()) {
                    if (tree instanceof ClassTree type) {
                        indexer.type(TreePath.getPath(unit, type), "", false);
                    }
                }
            }
            Files.createDirectories(out.getParent());
            Files.write(out, indexer.lines, UTF_8);
        }
    }

    private static boolean isOlder(Path file, Path than) {
        try {
            return Files.getLastModifiedTime(file).compareTo(Files.getLastModifiedTime(than)) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static List<Path> exported(Path sources) throws IOException {
        List<Path> files = new ArrayList<>();
        for (String line : Files.readAllLines(sources.resolve("module-info.java"), UTF_8)) {
            String words = line.strip();
            if (words.startsWith("exports ") && words.endsWith(";")) {
                String name = words.substring(8, words.length() - 1);
                try (Stream<Path> found = Files.list(sources.resolve(name.replace('.', '/')))) {
                    found.filter(f -> f.toString().endsWith(".java"))
                            .filter(f -> !f.endsWith("package-info.java"))
                            .sorted()
                            .forEach(files::add);
                }
            }
        }
        return files;
    }

    private void type(TreePath path, String outer, boolean open) {
        ClassTree type = (ClassTree) path.getLeaf();
        if (!open && !type.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
            return;
        }
        String packageName = path.getCompilationUnit().getPackageName().toString();
        String name = outer.isEmpty() ? packageName + "." + type.getSimpleName() : outer + "." + type.getSimpleName();
        DocCommentTree doc = docs.getDocCommentTree(path);
        boolean inInterface = type.getKind() == Tree.Kind.INTERFACE;
        add(name, "", kind(type) + " " + name, text(doc, type.getKind() != Tree.Kind.RECORD));
        Map<String, String> params = params(doc);
        for (Tree member : type.getMembers()) {
            TreePath at = new TreePath(path, member);
            if (member instanceof ClassTree) {
                type(at, name, inInterface);
            } else if (member instanceof MethodTree method) {
                method(name, method, at, inInterface);
            } else if (member instanceof VariableTree field) {
                field(type, name, field, at, params);
            }
        }
    }

    private void method(String type, MethodTree method, TreePath at, boolean open) {
        boolean constructor = method.getName().contentEquals("<init>");
        if (method.getReturnType() == null && !constructor
                || !isOpen(method.getModifiers(), open)
                || method.getModifiers().getAnnotations().toString().contains("@Override")) {
            return;
        }
        if (constructor && method.getParameters() == null) {
            return;
        }
        String simple = type.substring(type.lastIndexOf('.') + 1);
        String name = constructor ? simple : method.getName().toString();
        String returned = constructor ? "new " : plain(method.getReturnType()) + " ";
        String still = method.getModifiers().getFlags().contains(Modifier.STATIC) ? "static " : "";
        String parameters =
                method.getParameters().stream()
                        .map(p -> varargs(p) + " " + p.getName())
                        .collect(Collectors.joining(", "));
        add(type, name, still + returned + name + "(" + parameters + ")", text(docs.getDocCommentTree(at), true));
    }

    private void field(
            ClassTree type, String name, VariableTree field, TreePath at, Map<String, String> params) {
        boolean constant = field.getModifiers().getFlags().containsAll(List.of(Modifier.STATIC, Modifier.FINAL));
        String text = text(docs.getDocCommentTree(at), true);
        if (type.getKind() == Tree.Kind.RECORD && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
            String told = params.getOrDefault(field.getName().toString(), "");
            add(name, field.getName().toString(), plain(field.getType()) + " " + field.getName() + "()", told);
        } else if (type.getKind() == Tree.Kind.ENUM && constant
                && field.getType() != null
                && field.getType().toString().equals(type.getSimpleName().toString())) {
            add(name, field.getName().toString(), field.getName().toString(), text);
        } else if (constant && field.getModifiers().getFlags().contains(Modifier.PUBLIC)
                || type.getKind() == Tree.Kind.INTERFACE) {
            add(name, field.getName().toString(), "static " + plain(field.getType()) + " " + field.getName(), text);
        }
    }

    private static boolean isOpen(ModifiersTree modifiers, boolean open) {
        return modifiers.getFlags().contains(Modifier.PUBLIC)
                || open && !modifiers.getFlags().contains(Modifier.PRIVATE);
    }

    private static String kind(ClassTree type) {
        return switch (type.getKind()) {
            case RECORD -> "record";
            case ENUM -> "enum";
            case INTERFACE -> "interface";
            default -> "class";
        };
    }

    private static String varargs(VariableTree parameter) {
        String type = plain(parameter.getType());
        boolean many = parameter.toString().contains("...");
        return many && type.endsWith("[]") ? type.substring(0, type.length() - 2) + "..." : type;
    }

    private static String plain(Tree type) {
        return type.toString().replaceAll("@\\w+(\\(\\))? ?", "").replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "");
    }

    private void add(String type, String member, String signature, String text) {
        lines.add(
                String.join(
                        "\t",
                        type,
                        member,
                        signature.replaceAll("\\s+", " "),
                        text.strip().replace("\\", "\\\\").replace("\n", "\\n")));
    }

    private static Map<String, String> params(DocCommentTree doc) {
        Map<String, String> params = new LinkedHashMap<>();
        if (doc != null) {
            for (DocTree tag : doc.getBlockTags()) {
                if (tag instanceof ParamTree param) {
                    params.put(param.getName().toString(), sentence(param.getDescription()));
                }
            }
        }
        return params;
    }

    private static String text(DocCommentTree doc, boolean withParams) {
        if (doc == null) {
            return "";
        }
        StringBuilder text = new StringBuilder(sentence(doc.getFullBody()));
        for (DocTree tag : doc.getBlockTags()) {
            if (tag instanceof ParamTree param && withParams) {
                text.append("\n").append(param.getName()).append(": ").append(sentence(param.getDescription()));
            } else if (tag instanceof ReturnTree returned) {
                text.append("\nreturns ").append(sentence(returned.getDescription()));
            } else if (tag instanceof ThrowsTree thrown) {
                text.append("\nthrows ").append(thrown.getExceptionName()).append(" ").append(sentence(thrown.getDescription()));
            }
        }
        return text.toString();
    }

    private static String sentence(List<? extends DocTree> parts) {
        StringBuilder text = new StringBuilder();
        for (DocTree part : parts) {
            if (part instanceof LiteralTree literal) {
                text.append(literal.getBody().getBody());
            } else if (part instanceof LinkTree link) {
                text.append(link.getLabel().isEmpty() ? link.getReference().getSignature().replaceFirst("^#", "").replace('#', '.') : sentence(link.getLabel()));
            } else if (part instanceof StartElementTree start) {
                String name = start.getName().toString();
                text.append(name.equals("p") ? "\u0001" : name.equals("li") ? "\u0001- " : "");
            } else if (part instanceof EntityTree entity) {
                text.append(switch (entity.getName().toString()) {
                    case "lt" -> "<";
                    case "gt" -> ">";
                    case "amp" -> "&";
                    default -> " ";
                });
            } else if (!(part instanceof EndElementTree)) {
                text.append(part.toString());
            }
        }
        String words = text.toString().replaceAll("\\s+", " ").replaceAll(" ?\u0001 ?", "\n").strip();
        return words.startsWith(".") ? words.substring(1) : words;
    }
}
