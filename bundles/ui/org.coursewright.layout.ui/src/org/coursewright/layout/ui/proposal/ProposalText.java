package org.coursewright.layout.ui.proposal;

import org.eclipse.osgi.util.NLS;

/** What the view of proposals says. */
final class ProposalText extends NLS {

    public static String accept;
    public static String accessibleName;
    public static String alone;
    public static String cancel;
    public static String comment;
    public static String commentAsk;
    public static String commentTitle;
    public static String effect;
    public static String effectComing;
    public static String effectFailed;
    public static String effectIncomplete;
    public static String effectNoPrice;
    public static String effectNow;
    public static String effectOpen;
    public static String effectPrice;
    public static String failed;
    public static String find;
    public static String job;
    public static String lessMoney;
    public static String looking;
    public static String moreMoney;
    public static String none;
    public static String noProject;
    public static String nothingFound;
    public static String outdated;
    public static String refuse;
    public static String reopen;
    public static String sameMoney;
    public static String selectSome;
    public static String several;
    public static String columnAnswer;
    public static String columnChange;
    public static String columnComment;
    public static String columnDimension;
    public static String columnFrom;
    public static String columnMark;
    public static String columnSpares;
    public static String columnSparesHint;
    public static String columnTo;
    public static String columnWhere;

    static {
        NLS.initializeMessages(ProposalText.class.getPackageName() + ".messages", ProposalText.class);
    }

    private ProposalText() {
    }
}
