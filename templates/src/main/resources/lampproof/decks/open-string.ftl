<#-- The string opens at the crest of the line; the over-voltage limit of the control cell ends the rise. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="The lamp runs at the crest of the line until its string opens; the over-voltage limit then stops the cell."/>
<@block.mains from=event.lineDegrees/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter fault="open" protected=true/>
.end
