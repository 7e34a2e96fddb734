package org.coursewright.benchmarks;
import org.coursewright.benchmarks.walls.*;
import org.coursewright.benchmarks.oracle.*;
import org.coursewright.bond.*;
import java.util.*;
public class Probe {
  public static void main(String[] a){
    int n=Integer.parseInt(a[0]); double lim=Double.parseDouble(a[1]);
    int proven=0; double total=0;
    for(int i=0;i<n;i++){
      BondRequest r=SmallWalls.of(1,i);
      Handing h=Handing.all(r.meetings()).get(0);
      List<WallLayout> ls=new ArrayList<>();
      for(WallFace w: r.walls()){
        ModelAnswer m=GeneralModel.lay(w,h,lim);
        total+=m.seconds(); if(m.proven())proven++;
        System.out.printf("%d %s %s len %d courses %d stretches %d: %s proven %s %.2fs%n",i,SmallWalls.kind(i),w.mark(),w.length().units()/2032,w.courses().size(),Stretches.of(w,h).size(),m.score(),m.proven(),m.seconds());
        m.layout().ifPresent(ls::add);
      }
      if(ls.size()==r.walls().size()) { List<String> f=LayoutVerifier.faults(r,new BondResult(ls,h.throughOnOdd())); if(!f.isEmpty()) System.out.println(f); }
    }
    System.out.printf("proven %d in %.1fs%n",proven,total);
  }
}
