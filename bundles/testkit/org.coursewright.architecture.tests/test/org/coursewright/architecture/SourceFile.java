package org.coursewright.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;

/** A Java file as the JDK's own parser sees it: syntax and doc comments, nothing resolved. */
record SourceFile(String name, CompilationUnitTree unit, DocTrees docs) {

    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();

    /** Shared, for opening one costs more than parsing a file. */
    private static final StandardJavaFileManager FILES = COMPILER.getStandardFileManager(null, Locale.ROOT,
            StandardCharsets.UTF_8);

    static SourceFile read(Path file) {
        return parse(file.toString(), Repository.text(file));
    }

    static SourceFile parse(String name, String text) {
        JavaFileObject source = new SimpleJavaFileObject(URI.create("string:///Source.java"),
                JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
        JavacTask task = (JavacTask) COMPILER.getTask(null, FILES, diagnostic -> {
            throw new IllegalArgumentException(name + ": " + diagnostic.getMessage(Locale.ROOT));
        }, List.of("-proc:none"), null, List.of(source));
        try {
            return new SourceFile(name, task.parse().iterator().next(), DocTrees.instance(task));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String packageName() {
        return unit.getPackageName() == null ? "" : unit.getPackageName().toString();
    }

    /** Whether a doc comment with something in it stands before a declaration. */
    boolean isDocumented(Tree declaration) {
        DocCommentTree comment = docs.getDocCommentTree(TreePath.getPath(unit, declaration));
        return comment != null && !comment.getFirstSentence().isEmpty();
    }

    long line(Tree tree) {
        return unit.getLineMap().getLineNumber(docs.getSourcePositions().getStartPosition(unit, tree));
    }
}
