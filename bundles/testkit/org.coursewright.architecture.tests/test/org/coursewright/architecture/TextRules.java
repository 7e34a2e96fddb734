package org.coursewright.architecture;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import javax.lang.model.element.Modifier;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;

/**
 * That code and properties files name the same texts. A class of texts extends the platform's {@code NLS}: its public
 * fields are the keys of the file beside it. Each rule returns one line of complaint for each breach.
 */
final class TextRules {

    private static final Pattern REFERENCE = Pattern.compile("[\">:= ]%([A-Za-z][\\w.]*)");

    private TextRules() {
    }

    /** Whether a file declares a class of texts. */
    static boolean isClassOfTexts(SourceFile file) {
        return types(file)
                .anyMatch(type -> type.getExtendsClause() != null && type.getExtendsClause().toString().equals(
                        "NLS"));
    }

    /** What code asks for is in the properties file. */
    static List<String> textsWithoutWords(SourceFile texts, Set<String> keys) {
        return fields(texts).filter(field -> !keys.contains(field)).map(field -> texts.name() + ": " + field
                + " is not in messages.properties, so the user would read its name.").toList();
    }

    /** What the properties file says is asked for by code. */
    static List<String> wordsWithoutText(SourceFile texts, Set<String> keys) {
        Set<String> fields = new HashSet<>(fields(texts).toList());
        return keys.stream().filter(key -> !fields.contains(key)).sorted().map(key -> texts.name()
                + " has no field for " + key + " of messages.properties.").toList();
    }

    /** A text is shown somewhere: by a source of its bundle, or by a method of its own class. */
    static List<String> textsNobodyShows(SourceFile texts, List<SourceFile> sources) {
        String owner = types(texts).findFirst().orElseThrow().getSimpleName().toString();
        Set<String> shown = new HashSet<>();
        sources.forEach(source -> selections(source).filter(select -> select.getExpression().toString().equals(owner))
                .forEach(select -> shown.add(select.getIdentifier().toString())));
        identifiers(texts).forEach(shown::add);
        return fields(texts).filter(field -> !shown.contains(field)).map(field -> texts.name() + ": nobody shows "
                + field + ".").toList();
    }

    private static Stream<MemberSelectTree> selections(SourceFile file) {
        List<MemberSelectTree> found = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMemberSelect(MemberSelectTree select, Void unused) {
                found.add(select);
                return super.visitMemberSelect(select, unused);
            }
        }.scan(file.unit(), null);
        return found.stream();
    }

    private static Stream<String> identifiers(SourceFile file) {
        List<String> found = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitIdentifier(IdentifierTree identifier, Void unused) {
                found.add(identifier.getName().toString());
                return null;
            }
        }.scan(file.unit(), null);
        return found.stream();
    }

    /** What plugin.xml and manifest take from plugin.properties is there, and nothing else is. */
    static List<String> describedOtherwise(String bundle, String description, Set<String> keys) {
        Set<String> asked = new HashSet<>();
        for (Matcher reference = REFERENCE.matcher(description); reference.find();) {
            asked.add(reference.group(1));
        }
        return Stream.concat(
                asked.stream().filter(key -> !keys.contains(key)).map(key -> bundle + ": %" + key
                        + " is not in plugin.properties."),
                keys.stream().filter(key -> !asked.contains(key)).map(key -> bundle + ": nobody asks for " + key
                        + " of plugin.properties."))
                .sorted().toList();
    }

    private static Stream<String> fields(SourceFile texts) {
        return types(texts).flatMap(type -> type.getMembers().stream()).filter(VariableTree.class::isInstance).map(
                VariableTree.class::cast).filter(field -> field.getModifiers().getFlags().contains(Modifier.PUBLIC))
                .filter(TextRules::isText).map(field -> field.getName().toString());
    }

    private static boolean isText(VariableTree field) {
        Tree type = field.getType();
        return type.toString().equals("String") && !field.getModifiers().getFlags().contains(Modifier.FINAL);
    }

    private static Stream<ClassTree> types(SourceFile file) {
        return file.unit().getTypeDecls().stream().filter(ClassTree.class::isInstance).map(ClassTree.class::cast);
    }
}
