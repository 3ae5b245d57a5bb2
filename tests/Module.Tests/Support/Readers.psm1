# The two outside readers, and the same view of a file by LayerTools itself.

$repository = (Resolve-Path "$PSScriptRoot/../../..").Path
$scripts = "$PSScriptRoot/../readers"
$everyMember = [Reflection.BindingFlags] 'Instance, Public, NonPublic'

<#
.SYNOPSIS
Finds ag-psd and psd-tools: Command is null where one is missing, and Reason says why.
#>
function Find-OutsideReader {
    $readers = if ($env:LAYERTOOLS_READERS) { $env:LAYERTOOLS_READERS } else { Join-Path $repository 'out/readers' }
    $node = Get-Command node -CommandType Application -ErrorAction Ignore | Select-Object -First 1
    $agPsd = [pscustomobject]@{ Name = 'ag-psd'; Command = $null; Reason = $null }
    if (-not $node) { $agPsd.Reason = 'node is not on the PATH' }
    elseif (-not (Test-Path "$readers/node_modules/ag-psd")) { $agPsd.Reason = 'ag-psd is not installed (npm install --prefix out/readers ag-psd)' }
    else { $agPsd.Command = @($node.Source, "$scripts/dump.mjs", $readers) }
    $agPsd

    $psdTools = [pscustomobject]@{ Name = 'psd-tools'; Command = $null; Reason = 'no python3 with psd-tools was found (Debian: apt-get install python3-psd-tools)' }
    # The first python on the PATH need not be the one that the system's packages go to.
    foreach ($python in 'python3', '/usr/bin/python3', 'python') {
        if (-not (Get-Command $python -CommandType Application -ErrorAction Ignore)) { continue }
        & $python -c 'import psd_tools' 2>&1 > $null
        if ($LASTEXITCODE -eq 0) {
            $psdTools.Command = @($python, "$scripts/dump.py")
            $psdTools.Reason = $null
            break
        }
    }
    $psdTools
}

<#
.SYNOPSIS
Reads files with an outside reader: a table from path to what it found, or to its error.
#>
function Read-WithOutsideReader([object] $Reader, [string[]] $Path, [string[]] $Option = @()) {
    $encoding = [Console]::OutputEncoding
    try {
        [Console]::OutputEncoding = [Text.UTF8Encoding]::new($false)
        $executable = $Reader.Command[0]
        $arguments = @($Reader.Command | Select-Object -Skip 1)
        $json = & $executable @arguments @Option @Path
        if ($LASTEXITCODE -ne 0) { throw "$($Reader.Name) ended with $LASTEXITCODE." }
    }
    finally {
        [Console]::OutputEncoding = $encoding
    }

    $table = @{}
    foreach ($file in $json | Out-String | ConvertFrom-Json) { $table[$file.path] = $file }
    $table
}

<#
.SYNOPSIS
One line for each layer, front to back, from what an outside reader found, or from a file as LayerTools reads it: equal text means equal tree, names, bounds, switches and pixels.
#>
function Format-Reading([object] $Reading) {
    foreach ($layer in $Reading.layers) {
        $pixels = if ($layer.PSObject.Properties['channels']) {
            ($layer.channels.PSObject.Properties | Sort-Object { [int] $_.Name } | ForEach-Object { "$($_.Name)=$($_.Value.hash)" }) -join ' '
        }
        else {
            $layer.rgba
        }
        Format-ReadingLine $layer.name $layer.depth $layer.group $layer.bounds $layer.visible $layer.opacity $layer.clipped $pixels
    }
}

function Format-OwnReading([string] $Path, [string] $ReaderName) {
    $file = Get-LayerFile -LiteralPath $Path -ErrorAction Stop
    $core = $file.GetType().Assembly
    $type = $core.GetType('LayerTools.Pixels.PixelReader', $true)
    $pixelReader = $type.GetConstructors()[0].Invoke(@($file.PSObject.BaseObject, $null))
    try {
        foreach ($layer in $file.GetLayers()) {
            $group = "$($layer.Kind)" -eq 'Group'
            $pixels = $null
            if (-not $group) {
                $pixels = if ($ReaderName -eq 'ag-psd') { Get-RgbaHash $type $pixelReader $layer $file.BitDepth } else { (Get-ChannelHash $core $type $pixelReader $layer) -join ' ' }
            }
            $bounds = Get-Hidden $layer 'Bounds'
            Format-ReadingLine $layer.Name $layer.Depth $group @($bounds.Left, $bounds.Top, $bounds.Right, $bounds.Bottom) $layer.Visible `
                (Get-Hidden $layer 'OpacityByte') $layer.Clipped $pixels
        }
    }
    finally {
        $pixelReader.Dispose()
    }
}

function Format-ReadingLine($Name, $Depth, $Group, $Bounds, $Visible, $Opacity, $Clipped, $Pixels) {
    # Groups have no rectangle of their own; readers sum one up in different ways.
    $place = if ($Group) { 'group' } else { $Bounds -join ',' }
    "{0}'{1}' {2} visible={3} opacity={4} clipped={5} {6}" -f ('  ' * $Depth), $Name, $place, $Visible, $Opacity, $Clipped, $Pixels
}

# What the model keeps from users, but tests of it need.
function Get-Hidden([object] $Object, [string] $Property) {
    $Object.GetType().GetProperty($Property, $everyMember).GetValue($Object)
}

# At more bits ag-psd keeps its samples in a form of its own; there psd-tools' channels are what is compared.
function Get-RgbaHash([type] $Type, [object] $PixelReader, [object] $Layer, [int] $BitDepth) {
    if ($BitDepth -gt 8) { return }
    $raster = $Type.GetMethod('ReadRaster').Invoke($PixelReader, @($Layer.PSObject.BaseObject))
    if ($raster.Pixels.Length) { Get-Digest $raster.Pixels }
}

function Get-ChannelHash([Reflection.Assembly] $Core, [type] $Type, [object] $PixelReader, [object] $Layer) {
    foreach ($plane in (Get-Hidden $Layer 'Planes') | Sort-Object { [int] $_.Role }) {
        $samples = $Type.GetMethod('ReadPlane').Invoke($PixelReader, @($Layer.PSObject.BaseObject, $plane.Role))
        if ($samples.Length) { "$([int] $plane.Role)=$(Get-Digest $samples)" }
    }
}

function Get-Digest([byte[]] $Bytes) {
    $sha = [Security.Cryptography.SHA256]::Create()
    try { [BitConverter]::ToString($sha.ComputeHash($Bytes)).Replace('-', '').ToLowerInvariant() } finally { $sha.Dispose() }
}

Export-ModuleMember -Function Find-OutsideReader, Read-WithOutsideReader, Format-Reading, Format-OwnReading
