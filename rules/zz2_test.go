package rules_test
import ("testing";"fmt";"filmfurrow/rules/internal/farms";"filmfurrow/rules/question";"os";"strings")
func TestZZ2(t *testing.T){
 want:=os.Getenv("IDS"); file:=os.Getenv("F"); if file==""{file="held-out.csv"}
 for _,newest:=range []bool{false,true}{
 for _,r:=range recommendations(t,file,newest){ if !strings.Contains(want,r.id){continue}
  a:=farms.Advise(t,r.c); f:=a.Facts
  fmt.Printf("== %s newest %v %s %s %v plant %v air %.1f setting %.1f next %.1f autumn %v warmingpays %v free %v crop %v\n",r.id,newest,r.crop,r.place,r.c.PlantOn.Value,f.Plant,float64(f.AirMean),float64(f.AirSetting),float64(f.AirNext),f.Autumn,f.WarmingPays,f.FreeDays,f.CropDays)
  for i,o:=range a.Film.Ranked{ if i>4||o.RuledOutBy!=nil{break}
   fmt.Printf("  %-24s %.2f mean %.1f bare %.1f ahead %v: ",question.Film.Key(o.Option),o.Score,float64(f.MeanUnder[o.Option]),float64(f.MeanUnder[len(f.MeanUnder)-1]),f.Ahead[o.Option])
   for _,x:=range o.Factors{fmt.Printf("%s %+.2f; ",strings.TrimPrefix(x.Rule.ID,"film-"),x.Points())}
   fmt.Println()}
 }}
}
