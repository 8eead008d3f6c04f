<#-- A surge strikes a running lamp between line and neutral. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="The lamp runs until a surge strikes between line and neutral. Parts go on as before beyond their ratings."/>
<@block.mains from=event.lineDegrees line="mains"/>
<@block.surge/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter protected=true lineProbe="Vport"/>
.end
