package org.coursewright.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import javax.lang.model.element.Modifier;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;

/** How sources are written. Each rule returns one line of complaint for each breach. */
final class SourceRules {

    private static final Pattern VAGUE_PACKAGE = Pattern.compile("(.*\\.)?(utils?|helpers?|managers?|misc)(\\..*)?");
    private static final Pattern VAGUE_TYPE = Pattern.compile(
            ".*(Utils?|Utilities|Helper|Manager|Impl|Toolkit)|I[A-Z][a-z]\\w*");
    private static final Set<String> TEST_ANNOTATIONS = Set.of("Test", "ParameterizedTest", "RepeatedTest",
            "TestFactory");
    /** Calls that put a text before the user's eyes. */
    private static final Pattern SHOWS_TEXT = Pattern.compile(
            "set(Text|Message|ErrorMessage|Title|Description|ToolTipText|PartName|ContentDescription|WindowTitle)"
                    + "|open(Error|Question|Information|Warning|Confirm)|beginTask|subTask");
    private static final Set<String> SHOWN_OBJECTS = Set.of("Action", "MenuManager", "Status", "Label");

    private SourceRules() {
    }

    /** A public type of the programming interface says what it is. */
    static List<String> publicTypesWithoutJavadoc(SourceFile file) {
        return types(file).filter(type -> type.getModifiers().getFlags().contains(Modifier.PUBLIC)).filter(
                type -> !file.isDocumented(type)).map(
                        type -> at(file, type) + "public type " + type.getSimpleName()
                                + " has no Javadoc.")
                .toList();
    }

    /** Packages and types are named by what they mean, not by being useful. */
    static List<String> vagueNames(SourceFile file) {
        Stream<String> packages = Stream.of(file.packageName()).filter(VAGUE_PACKAGE.asMatchPredicate()).map(
                name -> file.name() + ": package " + name + " has a name that says nothing.");
        Stream<String> types = types(file).filter(type -> VAGUE_TYPE.matcher(type.getSimpleName()).matches()).map(
                type -> at(file, type) + type.getSimpleName() + " has a name that says how, not what.");
        return Stream.concat(packages, types).toList();
    }

    /** A class with tests ends in Test, for by that name it is selected. */
    static List<String> testsThatWouldNotRun(SourceFile file) {
        return types(file).filter(type -> !type.getSimpleName().toString().endsWith("Test")).filter(
                SourceRules::hasTests).map(
                        type -> at(file, type) + type.getSimpleName()
                                + " has tests, but its name does not end in Test.")
                .toList();
    }

    /** What the user reads comes from a properties file, not from the code. */
    static List<String> textsInCode(SourceFile file) {
        List<String> complaints = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void unused) {
                if (SHOWS_TEXT.matcher(simpleName(call.getMethodSelect())).matches()) {
                    literals(call.getArguments()).forEach(text -> complaints.add(at(file, call) + "the text \"" + text
                            + "\" is shown to the user; move it to a properties file."));
                }
                return super.visitMethodInvocation(call, unused);
            }

            @Override
            public Void visitNewClass(NewClassTree created, Void unused) {
                if (SHOWN_OBJECTS.contains(simpleName(created.getIdentifier()))) {
                    literals(created.getArguments()).forEach(text -> complaints.add(at(file, created) + "the text \""
                            + text + "\" is shown to the user; move it to a properties file."));
                }
                return super.visitNewClass(created, unused);
            }
        }.scan(file.unit(), null);
        return complaints;
    }

    /** Literals that read like language: a letter, and a space or a capital at the start. */
    private static Stream<String> literals(List<? extends ExpressionTree> arguments) {
        List<String> texts = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitLiteral(LiteralTree literal, Void unused) {
                if (literal.getValue() instanceof String text
                        && text.matches("(?s)\\p{Lu}.*|.*\\p{L}.* .*|.* .*\\p{L}.*")) {
                    texts.add(text);
                }
                return null;
            }

            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void unused) {
                return null; // a key handed to another method is looked at, if at all, where that method shows it
            }
        }.scan(arguments, null);
        return texts.stream();
    }

    private static boolean hasTests(ClassTree type) {
        return type.getMembers().stream().filter(MethodTree.class::isInstance).map(MethodTree.class::cast).flatMap(
                method -> method.getModifiers().getAnnotations().stream()).map(AnnotationTree::getAnnotationType).map(
                        SourceRules::simpleName)
                .anyMatch(TEST_ANNOTATIONS::contains);
    }

    private static Stream<ClassTree> types(SourceFile file) {
        return file.unit().getTypeDecls().stream().filter(ClassTree.class::isInstance).map(ClassTree.class::cast);
    }

    private static String simpleName(Tree expression) {
        return expression instanceof MemberSelectTree select
                ? select.getIdentifier().toString()
                : expression.toString();
    }

    private static String at(SourceFile file, Tree tree) {
        return file.name() + ":" + file.line(tree) + ": ";
    }
}
